package org.espalier.interchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;

/** Names the implants of one child in the order in which they were put in, for its rows to speak of. */
final class ImplantList {

    private final Map<ImplantId, String> names = new HashMap<>();
    private final List<List<String>> rows = new ArrayList<>();

    /** The name; an implant is described where it is put in. */
    String name(ImplantId implant, Act act) {
        var known = names.get(implant);
        if (known != null) {
            return known;
        }
        var name = Integer.toString(names.size() + 1);
        names.put(implant, name);
        if (act.kind().putsIn()) {
            rows.add(List.of(name, act.implants(), Integer.toString(act.count())));
        }
        return name;
    }

    List<List<String>> rows(String number) {
        return rows.stream()
                .map(row -> List.of(number, row.get(0), row.get(1), row.get(2)))
                .toList();
    }
}
