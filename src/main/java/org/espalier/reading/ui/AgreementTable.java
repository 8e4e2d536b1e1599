package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import org.espalier.kit.Texts;
import org.espalier.reading.Agreement;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.SiteRepeatability;
import org.espalier.science.statistics.BlandAltman;
import org.espalier.science.statistics.Interval;
import org.espalier.science.statistics.IntraclassCorrelation;

/** A line a quantity: mean difference, limits of agreement, correlation, error of one reading, smallest change. */
class AgreementTable extends Composite<Div> {

    private static final List<String> HEADINGS = List.of(
            "reading.readers.quantity",
            "reading.readers.pairs",
            "reading.readers.mean",
            "reading.readers.limits",
            "reading.readers.icc",
            "reading.readers.sem",
            "reading.readers.change");

    AgreementTable(List<Agreement> agreements) {
        var table = new NativeTable();
        var headings = new NativeTableRow();
        HEADINGS.forEach(key -> {
            var heading = new NativeTableHeaderCell(Texts.text(key));
            heading.getElement().setAttribute("scope", "col");
            headings.add(heading);
        });
        table.add(headings);
        agreements.forEach(agreement -> table.add(row(agreement)));
        getContent().add(table);
        getContent().addClassName("agreement");
        getContent().getElement().setAttribute("tabindex", "0");
        getContent().getElement().setAttribute("role", "group");
        getContent().getElement().setAttribute("aria-label", Texts.text("reading.readers"));
    }

    private static NativeTableRow row(Agreement agreement) {
        var quantity = agreement.quantity();
        var name = new NativeTableHeaderCell(NumberText.label(quantity));
        name.getElement().setAttribute("scope", "row");
        var row = new NativeTableRow();
        row.add(
                name,
                cell(String.valueOf(agreement.pairs())),
                cell(agreement.differences().map(all -> mean(quantity, all)).orElse("")),
                cell(agreement.differences().map(all -> limits(quantity, all)).orElse("")),
                cell(agreement.correlation().map(AgreementTable::correlation).orElse("")),
                cell(agreement
                        .repeatability()
                        .map(one -> Texts.text(
                                "reading.readers.based",
                                NumberText.brief(quantity, one.standardError()),
                                Texts.text(
                                        "reading.readers.basis." + one.basis().name())))
                        .orElseGet(() -> Texts.text("reading.readers.not-enough", SiteRepeatability.ENOUGH))),
                cell(agreement
                        .repeatability()
                        .map(one -> NumberText.brief(quantity, one.smallestChange95()))
                        .orElse("")));
        return row;
    }

    private static String mean(Quantity quantity, BlandAltman all) {
        return Texts.text(
                "reading.readers.with-interval",
                NumberText.brief(quantity, all.meanDifference()),
                interval(quantity, all.meanInterval()));
    }

    private static String limits(Quantity quantity, BlandAltman all) {
        var limits = all.limits(BlandAltman.NINETY_FIVE);
        return Texts.text(
                "reading.readers.two-limits",
                NumberText.brief(quantity, limits.low()),
                interval(quantity, all.lowerLimitInterval(BlandAltman.NINETY_FIVE)),
                NumberText.brief(quantity, limits.high()),
                interval(quantity, all.upperLimitInterval(BlandAltman.NINETY_FIVE)));
    }

    private static String correlation(IntraclassCorrelation correlation) {
        var value = NumberText.plain(correlation.value());
        return correlation
                .interval()
                .map(interval -> Texts.text(
                        "reading.readers.with-interval",
                        value,
                        Texts.text(
                                "reading.range.words",
                                NumberText.plain(interval.low()),
                                NumberText.plain(interval.high()))))
                .orElse(value);
    }

    private static String interval(Quantity quantity, Interval interval) {
        return Texts.text(
                "reading.range.words",
                NumberText.brief(quantity, interval.low()),
                NumberText.brief(quantity, interval.high()));
    }

    private static NativeTableCell cell(String text) {
        return new NativeTableCell(text);
    }
}
