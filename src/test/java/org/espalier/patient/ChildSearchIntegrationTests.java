package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class ChildSearchIntegrationTests {

    @Autowired
    PatientService patients;

    @Autowired
    TestNetwork network;

    @Autowired
    Ids ids;

    SiteId site;
    UUID nurse;

    @BeforeEach
    void aHospitalWithChildren() {
        site = new SiteId(network.site());
        nurse = network.staff(site.value(), "NURSE");
        register("Silva Marques", "João", LocalDate.of(2019, 7, 4), "40317");
        register("Thorncastle", "Beatrix", LocalDate.of(2016, 11, 23), "40888");
        register("Oduya", "Ife", LocalDate.of(2021, 3, 30), "51209");
        register("O’Marrow", "Li", LocalDate.of(2014, 12, 9), "A/77.3");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Silva",
                "silv",
                "MARQUES",
                "joao",
                "João Silva",
                "marques, joao",
                "sliva",
                "silvva",
                "slva",
                "sillva marqes",
                "4 Jul 2019",
                "04-Jul-2019",
                "4/7/2019",
                "7/4/2019",
                "04072019",
                "2019-07-04",
                "4.7.2091 silva",
                "14 Jul 2019",
                "40317",
                "40371",
                "4031",
                "40318",
                "silva 4 jul 2019",
                "joao 40317"
            })
    void findsJoaoHoweverItIsTyped(String typed) {
        assertThat(found(typed)).first().isEqualTo("Silva Marques");
    }

    @ParameterizedTest
    @ValueSource(strings = {"thorncaslte", "Beatriks", "23 november 2016", "23.11.2061", "40888", "thorn 40888"})
    void findsBeatrixHoweverSheIsTyped(String typed) {
        assertThat(found(typed)).first().isEqualTo("Thorncastle");
    }

    @ParameterizedTest
    @ValueSource(strings = {"omarrow", "o'marrow", "o’marrow li", "a/77.3", "A/77.4", "9 dec 2014", "12/09/2014"})
    void findsNamesAndNumbersWithPunctuation(String typed) {
        assertThat(found(typed)).contains("O’Marrow");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Wolverhampton", "99999", "1 Jan 1999", "silva 40888", "%", "(", "\\", "' or 1=1 --", "  "})
    void findsNobodyForWhatIsLikeNobody(String typed) {
        assertThat(found(typed)).isEmpty();
    }

    @Test
    void putsTheNearestFirst() {
        register("Silvan", "Ruth", LocalDate.of(2018, 1, 1), "7");
        register("Silva", "Ana", LocalDate.of(2018, 1, 2), "8");
        assertThat(found("silva ana")).first().isEqualTo("Silva");
    }

    @Test
    void seesThatAChildMayBeRegisteredAlready() {
        var again = new ChildData("Silva Marquez", "Joao", LocalDate.of(2019, 4, 7), null, null);
        assertThat(network.as(nurse, () -> patients.alike(site, again)))
                .extracting(child -> child.data().orElseThrow().localNumber())
                .containsExactly("40317");
        var sister = new ChildData("Silva Marques", "Inês", LocalDate.of(2017, 1, 9), null, null);
        assertThat(network.as(nurse, () -> patients.alike(site, sister))).isEmpty();
    }

    private void register(String family, String given, LocalDate born, String number) {
        var data = new ChildData(family, given, born, Sex.FEMALE, number);
        network.as(nurse, () -> patients.register(site, new ChildId(ids.next()), data));
    }

    private List<String> found(String typed) {
        return network.as(nurse, () -> patients.find(site, typed, Locale.ENGLISH)).stream()
                .map(child -> child.data().orElseThrow().familyName())
                .toList();
    }
}
