package org.espalier.reading;

import java.util.Arrays;
import java.util.List;
import org.espalier.access.SiteId;
import org.espalier.science.alignment.Quantity;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How far the readers of a hospital agree, from films that two of them read blind. */
@Service
@Transactional(readOnly = true)
public class ReadersService {

    private final DoubleReadings doubles;

    ReadersService(DoubleReadings doubles) {
        this.doubles = doubles;
    }

    /** Every quantity of which something can be said, in listing order. */
    public List<Agreement> agreement(SiteId site) {
        var pairs = doubles.of(site);
        return Arrays.stream(Quantity.values())
                .map(quantity -> Agreement.of(quantity, pairs.getOrDefault(quantity, List.of())))
                .filter(Agreement::tells)
                .toList();
    }

    /** Films that one other reader has read and the caller has not, the newest reading first. */
    public List<UnpairedFilm> unpaired(SiteId site) {
        return doubles.unpaired(site);
    }
}
