package org.espalier.reading;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What is kept of a reading in the making, beside what every draft has. */
record DraftContent(
        ReadingSettings settings,
        Marks marks,
        long marksRevision,
        @Nullable UUID supersedes,
        @Nullable UUID secondOf) {

    static DraftContent of(ReadingDraft draft) {
        return new DraftContent(
                draft.settings(),
                draft.marks(),
                draft.marksRevision(),
                draft.supersedes().map(ReadingId::value).orElse(null),
                draft.secondOf().map(ReadingId::value).orElse(null));
    }

    /** From what is kept; drafts begun when less was asked of how a film was taken are brought along. */
    static DraftContent of(String kept, JsonMapper json) {
        var content = (ObjectNode) json.readTree(kept);
        var settings = (ObjectNode) content.get("settings");
        if (!settings.has("taken")) {
            settings.set("taken", taken(settings, json));
        }
        return json.treeToValue(content, DraftContent.class);
    }

    private static ObjectNode taken(ObjectNode settings, JsonMapper json) {
        var taken = json.createObjectNode();
        taken.set("ballMm", settings.get("ballDiameterMm"));
        if (settings.get("positioning") instanceof ObjectNode before) {
            var stance = before.path("stance").asString("NOT_RECORDED");
            taken.put("stance", stance.equals("HELD") ? "STANDING_HELD" : stance);
            taken.set("patellaRight", before.get("patella"));
            taken.set("patellaLeft", before.get("patella"));
            taken.set("flexionRight", before.get("kneeFlexion"));
            taken.set("flexionLeft", before.get("kneeFlexion"));
        }
        return taken;
    }
}
