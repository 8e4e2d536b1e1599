package org.espalier.cost.ui;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import org.espalier.access.Site;
import org.espalier.cost.Budget;
import org.espalier.cost.CostReportService;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** What will the next quarter cost by what is written down today? */
@Route(Urls.COSTS_BUDGET)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/cost.css")
class BudgetView extends CostPage {

    private final CostReportService reports;

    BudgetView(CostReportService reports, CostSites sites) {
        super(sites, "cost.budget");
        this.reports = reports;
    }

    @Override
    protected void show(Site here, Div body) {
        var budget = reports.budget(here.id());
        var sheet = PageParts.part(
                Texts.text("cost.budget-of", DateText.of(budget.from()), DateText.of(budget.until())),
                new LineTable<Budget.Line>("cost.charges.none")
                        .text("cost.what", one -> Texts.of(one.what()))
                        .number("cost.how-many", one -> String.valueOf(one.count()))
                        .number("cost.total", BudgetView::cost)
                        .with(budget.lines()));
        sheet.add(PageParts.said(
                budget.range().map(BudgetView::range).orElseGet(() -> Texts.text("cost.budget.no-range"))));
        body.add(sheet);
        if (!budget.missing().isEmpty()) {
            body.add(PageParts.said(Texts.text(
                    "cost.budget.missing",
                    String.join(
                            ", ",
                            budget.missing().stream().sorted().map(Texts::of).toList()))));
        }
        body.add(
                PageParts.said(budget.implants()
                        .map(spread -> Texts.text(
                                "cost.budget.implants",
                                spread.count(),
                                CostText.about(spread.median()),
                                CostText.about(spread.lower()),
                                CostText.about(spread.upper())))
                        .orElseGet(() -> Texts.text("cost.budget.no-implants"))),
                PageParts.said(Texts.text("cost.budget.what")));
    }

    private static String range(Budget.Range range) {
        return range.low().equals(range.high())
                ? Texts.text("cost.budget.sure", CostText.about(range.low()))
                : Texts.text(
                        "cost.budget.range",
                        CostText.about(range.low()),
                        CostText.about(range.middle()),
                        CostText.about(range.high()));
    }

    private static String cost(Budget.Line line) {
        return line.cost()
                .map(CostText::about)
                .orElseGet(() -> Texts.text(line.count() == 0 ? "cost.nothing" : "cost.no-price"));
    }
}
