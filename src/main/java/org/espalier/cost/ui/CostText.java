package org.espalier.cost.ui;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.cost.Cell;
import org.espalier.cost.Charge;
import org.espalier.cost.ChargeLine;
import org.espalier.cost.CostSum;
import org.espalier.cost.Money;
import org.espalier.cost.Priced;
import org.espalier.cost.Tariff;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/** Amounts, counts and charges in words. */
final class CostText {

    private static final int MOST_DECIMALS = 4;

    private CostText() {}

    /** To the currency's last decimal. */
    static String of(Money money) {
        return text(money, money.amount().scale());
    }

    /** To whole units, for what is estimated or averaged. */
    static String about(Money money) {
        return text(new Money(money.amount().setScale(0, RoundingMode.HALF_UP), money.currency()), 0);
    }

    private static String text(Money money, int decimals) {
        return Texts.text("cost.money", money.currency().getCurrencyCode(), number(money.amount(), decimals, decimals));
    }

    static String of(CostSum sum) {
        var amounts = sum.byCurrency().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(one -> of(one.getValue()))
                .collect(Collectors.joining("; "));
        if (sum.unpriced() == 0) {
            return amounts.isEmpty() ? Texts.text("cost.nothing") : amounts;
        }
        var unpriced = Texts.text("cost.unpriced", sum.unpriced());
        return amounts.isEmpty() ? unpriced : Texts.text("cost.sum-unpriced", amounts, unpriced);
    }

    static String number(BigDecimal number) {
        return number(number, 0, MOST_DECIMALS);
    }

    private static String number(BigDecimal number, int least, int most) {
        var format = NumberFormat.getNumberInstance(Texts.language());
        format.setMinimumFractionDigits(least);
        format.setMaximumFractionDigits(most);
        return format.format(number);
    }

    static String of(Cell cell) {
        return switch (cell) {
            case Cell.Told(int count) -> String.valueOf(count);
            case Cell.Hidden() -> Texts.text("cost.hidden");
        };
    }

    static String price(Tariff tariff) {
        var currency = tariff.data().currency();
        var price = tariff.data().price();
        return currency == null
                ? Texts.text("cost.percent", number(price))
                : Texts.text(
                        "cost.price",
                        currency.getCurrencyCode(),
                        number(price, currency.getDefaultFractionDigits(), MOST_DECIMALS),
                        Texts.of(tariff.data().item().unit()));
    }

    static String unit(ChargeLine line) {
        return line.priced()
                .map(one -> number(one.unit(), one.amount().amount().scale(), MOST_DECIMALS))
                .orElse("");
    }

    static String amount(Optional<Priced> priced) {
        return priced.map(one -> of(one.amount())).orElseGet(() -> Texts.text("cost.no-price"));
    }

    static String overhead(Optional<Priced> priced) {
        return priced.map(one ->
                        number(one.overhead().amount(), one.overhead().amount().scale(), MOST_DECIMALS))
                .orElse("");
    }

    static String side(ChargeLine line) {
        var side = line.side();
        return side == null ? Texts.text("cost.both") : Texts.of(side);
    }

    static String days(ChargeLine line) {
        return line.on().equals(line.until())
                ? DateText.of(line.on())
                : Texts.text("cost.from-until", DateText.of(line.on()), DateText.of(line.until()));
    }

    /** What became of a charge, and why; empty when it stands by rule. */
    static String state(Charge charge) {
        var why = charge.reason().map(CostText::reason).orElse("");
        if (charge.reverses().isPresent()) {
            return Texts.text("cost.reversal", why);
        }
        if (charge.reversed()) {
            return Texts.text("cost.reversed");
        }
        return charge.adjusts().isPresent() ? Texts.text("cost.adjusted", why) : why;
    }

    private static String reason(String reason) {
        for (var known : Charge.Reversal.values()) {
            if (known.name().equals(reason)) {
                return Texts.of(known);
            }
        }
        return reason;
    }
}
