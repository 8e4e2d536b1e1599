package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.kit.Texts;
import org.espalier.stock.TestStock.Stocked;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The codes of one label, as a photo shows them all at once. */
@IntegrationTest
class LabelServiceIntegrationTests {

    private static final String GTIN = "09506000134390";

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock test;

    @Autowired
    CatalogueService catalogue;

    @Autowired
    LabelService labels;

    Stocked here;

    @BeforeEach
    void stocked() {
        here = test.empty(new SiteId(network.site()));
    }

    @Test
    void joinsTheCodesOfOneLabel() {
        var label = together("+$$52001510X3GD", "+A123BJC5D6E71G");
        assertThat(label.code()).contains(new ProductCode(ProductCode.Scheme.HIBC, "A123BJC5D6E71"));
        assertThat(label.lot()).contains("10X3");
        assertThat(label.expires()).contains(LocalDate.of(2020, 1, 15));
        assertThat(label.problem()).isEmpty();
    }

    @Test
    void takesTheCodeThatTheCatalogueKnows() {
        var hibc = new ProductCode(ProductCode.Scheme.HIBC, "A99912349");
        test.as(here, () -> catalogue.addCode(here.plate().id(), hibc));
        var label = together("(01)" + GTIN + "(10)G-1", "+A99912349B");
        assertThat(label.product().map(Product::id)).contains(here.plate().id());
        assertThat(together("(01)" + GTIN + "(10)G-1").lot()).contains("G-1");
    }

    @Test
    void leavesOutWhatIsNoCodeOfAProductAndSaysWhenNothingIsLeft() {
        assertThat(together("http://example.org/x", "(01)" + GTIN + "(10)G-2").lot())
                .contains("G-2");
        assertThat(together("(17)291300").problem())
                .hasValueSatisfying(said -> assertThat(said).startsWith("There is no such date"));
        assertThat(together().problem()).contains(Texts.text("stock.photo.no-code"));
    }

    @Test
    void refusesTwoLabelsAtOnce() {
        var label = together("(01)" + GTIN, "(01)09506000134352");
        assertThat(label.product()).isEmpty();
        assertThat(label.problem()).hasValueSatisfying(said -> assertThat(said).contains("Scan one label only"));
    }

    private Label together(String... codes) {
        return test.as(here, () -> labels.readTogether(List.of(codes)));
    }
}
