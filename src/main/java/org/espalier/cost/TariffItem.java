package org.espalier.cost;

import java.util.List;
import java.util.stream.Stream;

/** What a hospital sets a price for. */
public enum TariffItem {
    THEATRE_MINUTE(Unit.MINUTE),
    ANAESTHESIA_MINUTE(Unit.MINUTE),
    /** A night in a bed; of a day case, as much of one as was agreed. */
    BED_DAY(Unit.DAY),
    VISIT(Unit.PIECE),
    FILM(Unit.PIECE),
    MRI(Unit.PIECE),
    CAST(Unit.PIECE),
    BRACE(Unit.PIECE),
    PHYSIOTHERAPY(Unit.SESSION),
    FRAME_DAY(Unit.DAY),
    LETTER(Unit.PIECE),
    MISSED_VISIT(Unit.PIECE),
    /** A piece whose lot has no cost of its own. */
    IMPLANT(Unit.PIECE),
    /** On everything but implants. */
    OVERHEAD(Unit.PERCENT),
    OVERHEAD_IMPLANT(Unit.PERCENT);

    /** What is counted. */
    public enum Unit {
        MINUTE,
        DAY,
        SESSION,
        PIECE,
        PERCENT
    }

    private final Unit unit;

    TariffItem(Unit unit) {
        this.unit = unit;
    }

    public Unit unit() {
        return unit;
    }

    /** Whether its price is a share of other charges, and not an amount. */
    public boolean isShare() {
        return unit == Unit.PERCENT;
    }

    /** Whether it runs over days, so that a change of tariff may fall among them. */
    boolean runsOverDays() {
        return unit == Unit.DAY;
    }

    /** The share that comes on top of it. */
    TariffItem overhead() {
        return this == IMPLANT ? OVERHEAD_IMPLANT : OVERHEAD;
    }

    /** What is charged, shares left out. */
    public static List<TariffItem> charged() {
        return Stream.of(values()).filter(item -> !item.isShare()).toList();
    }

    /** What an operation takes by agreement. */
    public static List<TariffItem> allowed() {
        return List.of(THEATRE_MINUTE, ANAESTHESIA_MINUTE, BED_DAY, PHYSIOTHERAPY, MRI, CAST, BRACE);
    }
}
