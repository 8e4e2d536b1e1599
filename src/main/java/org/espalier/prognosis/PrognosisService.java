package org.espalier.prognosis;

import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where a child's limbs are going, reckoned from the facts at the time of asking. */
@Service
@Transactional
public class PrognosisService {

    private final FactReader facts;
    private final RatesInUse rates;

    PrognosisService(FactReader facts, RatesInUse rates) {
        this.facts = facts;
        this.rates = rates;
    }

    /** Empty when there is no such child that the caller may see. */
    public Optional<Prognosis> of(ChildId child) {
        return facts.of(child)
                .map(read -> new Reckoning(read, rates.of(read.child().site())).prognosis());
    }

    /** The same, with what could be done at each knee. Empty when there is no such child that the caller may see. */
    public Optional<Ahead> ahead(ChildId child) {
        return facts.of(child).map(this::ahead);
    }

    private Ahead ahead(ChildFacts read) {
        var reckoning = new Reckoning(read, rates.of(read.child().site()));
        return new Ahead(
                reckoning.prognosis(),
                read.examination(),
                read.treatment(),
                read.films(),
                Stream.of(Side.RIGHT, Side.LEFT)
                        .flatMap(side -> reckoning.ahead(side).stream())
                        .toList());
    }
}
