package org.espalier.interchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;

/** What the file of implants says, and which implant on record each of its names means. */
final class ImplantNames {

    private record Key(String number, String implant) {}

    /** What is said of an implant. */
    record Described(String description, int pieces) {}

    private static final int MOST_PIECES = 40;

    private final UUID site;
    private final Map<Key, Described> described = new HashMap<>();
    private final Map<Key, ImplantId> meant = new HashMap<>();
    private final Set<Key> fresh = new HashSet<>();

    ImplantNames(UUID site) {
        this.site = site;
    }

    private static Key key(ClinicRow row) {
        return new Key(row.text("local_number"), row.text("implant"));
    }

    /** Learns what can be learnt; what is wrong with the row is said when its turn comes. */
    void read(ClinicRow row) {
        var description = row.text("description");
        var pieces = row.text("pieces");
        if (!description.isEmpty() && pieces.matches("\\d{1,2}")) {
            described.putIfAbsent(key(row), new Described(description, Integer.parseInt(pieces)));
        }
    }

    Optional<Described> described(ClinicRow row) {
        return Optional.ofNullable(described.get(key(row)));
    }

    /** The implant a row means: the one on record, or a new one. */
    ImplantId of(ClinicRow row) {
        var key = key(row);
        return meant.computeIfAbsent(
                key, one -> new ImplantId(StableIds.of(site, "implant", one.number(), one.implant())));
    }

    /** The rows are on record already: their names mean those implants. */
    void areThose(List<ClinicRow> rows, List<Act> acts) {
        for (int i = 0; i < rows.size(); i++) {
            var implant = acts.get(i).implant();
            if (implant != null) {
                meant.put(key(rows.get(i)), implant);
            }
        }
    }

    void areNew(List<ClinicRow> rows) {
        rows.forEach(row -> fresh.add(key(row)));
    }

    /** What a row of the file of implants does. */
    Effect effect(ClinicRow row) {
        row.cells().name("implant");
        row.cells().name("description");
        row.cells().number("pieces", 0, MOST_PIECES);
        if (!meant.containsKey(key(row))) {
            row.cells().refuse("implant", FileReason.IMPLANT_NOT_PUT_IN);
        }
        return fresh.contains(key(row)) ? Effect.NEW : Effect.KNOWN;
    }
}
