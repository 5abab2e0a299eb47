package dev.ledgerwing.web.balance;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** Load cases, bays and rules. */
@PageTest
@TestPropertySource(properties = "ledgerwing.demo=true")
class LoadCaseFormTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private final String code = "c" + UUID.randomUUID().toString().substring(0, 18);
    private final String balance = "/airframes/" + code + "/balance";
    private Browser browser;

    @BeforeEach
    void openAnAirframe() {
        browser = SignedInBrowser.at(port);
        desk.open(BalanceAirframes.withWingAndPack(code), new Signature("Ines", ""));
    }

    private Build build() {
        return readings.head(code).build();
    }

    private Page send(String form, Map<String, String> typed) {
        return FormWalk.send(browser, balance + form, typed);
    }

    private static Map<String, String> ferry() {
        return new HashMap<>(Map.of(
                "name", "Ferry, no pack",
                "absent", "L2",
                "moved.0.line", "L1",
                "moved.0.x", "61 cm",
                "extra.0.name", "Sample bottles",
                "extra.0.mass", "300",
                "extra.0.basis", "WEIGHED",
                "extra.0.x", "450"));
    }

    @Test
    void aCaseSaysWhatStaysAtHomeWhatSitsElsewhereAndWhatIsCarried() {
        Page after = send("/new-case", ferry());

        assertThat(after.path()).isEqualTo(balance);
        assertThat(after.document().select(".impact .change").text()).isEqualTo("Load case Ferry, no pack added");
        LoadCase added = build().loadCases().get(1);
        assertThat(added.code()).isEqualTo("ferry-no-pack");
        assertThat(added.design()).isFalse();
        assertThat(added.absent()).containsExactly("L2");
        assertThat(added.moved()).containsEntry("L1", Station.atX(Length.ofMm(610)));
        assertThat(added.extra())
                .containsExactly(new LoadCase.ExtraItem(
                        "Sample bottles", Mass.ofGrams(300), Basis.WEIGHED, Station.atX(Length.ofMm(450))));

        Page form = browser.open(balance + "/cases/ferry-no-pack");
        assertThat(FormWalk.ticked(form, "absent")).containsExactly("L2");
        assertThat(FormWalk.value(form, "extra.0.name")).isEqualTo("Sample bottles");
    }

    @Test
    void theDesignMarkMovesInTheSameChange() {
        send("/new-case", ferry());
        send("/cases/ferry-no-pack", Map.of("design", "on"));

        assertThat(build().designCase().code()).isEqualTo("ferry-no-pack");
        assertThat(build().loadCases()).hasSize(2);
        assertThat(readings.head(code).revision().title()).endsWith("the design case now");
    }

    @Test
    void theDesignCaseStaysOneAndIsFlown() {
        Page form = browser.open(balance + "/cases/all-up");
        Map<String, String> unmarked = FormWalk.fields(form, Map.of());
        unmarked.remove("design");
        Page again = browser.post(balance + "/cases/all-up", form, unmarked);
        assertThat(FormWalk.error(again, "design")).contains("To make another one it, mark that one");

        Page ground = send("/cases/all-up", Map.of("purpose", "GROUND"));
        assertThat(FormWalk.error(ground, "purpose")).contains("The design case is one that is flown");
        assertThat(readings.head(code).revision().number()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    name; ; Please name the load case.
                    purpose; SPACE; Please choose one from the list.
                    moved.0.line; ; Please choose the part that sits elsewhere.
                    moved.0.x; 5 kg; is not a length
                    moved.0.x; ; Please give where it sits.
                    extra.0.name; ; Please name it.
                    extra.0.mass; -3; A mass is from 0 g to 1000 kg.
                    extra.0.mass; 3 mm; is not a mass
                    extra.0.basis; DREAMT; Please choose one from the list.
                    """)
    void whatCannotBeIsSaidAtItsField(String field, String typed, String sentence) {
        Map<String, String> wrong = ferry();
        wrong.put(field, typed == null ? "" : typed);
        Page again = send("/new-case", wrong);

        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, field)).contains(sentence);
        assertThat(FormWalk.value(again, "extra.0.x")).isEqualTo("450");
        assertThat(FormWalk.ticked(again, "absent")).containsExactly("L2");
        assertThat(build().loadCases()).hasSize(1);
    }

    @Test
    void aPartThatIsNotThereIsRefusedWithTheReason() {
        Map<String, String> wrong = ferry();
        wrong.put("absent", "L99");
        Page again = send("/new-case", wrong);
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select(".notice.problem").text()).contains("There is no part “L99”");
    }

    @Test
    void aCaseIsRemovedUnlessSomethingNeedsIt() {
        send("/new-case", ferry());
        Page form = browser.open(balance + "/cases/ferry-no-pack");
        browser.post(balance + "/cases/ferry-no-pack/remove", form, FormWalk.fields(form, Map.of()));
        assertThat(build().loadCases()).hasSize(1);

        Page design = browser.open(balance + "/cases/all-up");
        assertThat(design.document().select("[formaction]")).isEmpty();
        Page refused = browser.post(balance + "/cases/all-up/remove", design, FormWalk.fields(design, Map.of()));
        assertThat(refused.document().select(".notice.problem").text()).contains("mark another case first");
    }

    @Test
    void aCaseThatAPhaseIsFlownInStays() {
        Build curlew = readings.head("curlew").build();
        String needed = curlew.phases().stream()
                .map(phase -> phase.loadCase())
                .filter(each -> each != null && !each.equals(curlew.designCase().code()))
                .findFirst()
                .orElse(curlew.designCase().code());
        Page form = browser.open("/airframes/curlew/balance/cases/" + needed);
        Page refused = browser.post(
                "/airframes/curlew/balance/cases/" + needed + "/remove", form, FormWalk.fields(form, Map.of()));
        assertThat(refused.document().select(".notice.problem").text()).contains("first");
        assertThat(readings.head("curlew").build().loadCases()).isEqualTo(curlew.loadCases());
    }

    @Test
    void aBayIsAddedEditedAndRemoved() {
        send("/new-bay", Map.of("name", "Battery bay", "fromX", "16 cm", "toX", "340", "holds", "L2"));
        assertThat(build().bays()).hasSize(1);
        assertThat(build().bays().get(0).holds()).containsExactly("L2");
        assertThat(browser.open(balance).text()).contains("Battery bay").contains("160 to 340");

        send("/bays/battery-bay", Map.of("fromY", "-40", "toY", "40"));
        assertThat(build().bays().get(0).fromY()).isEqualTo(Length.ofMm(-40));
        Page form = browser.open(balance + "/bays/battery-bay");
        browser.post(balance + "/bays/battery-bay/remove", form, FormWalk.fields(form, Map.of()));
        assertThat(build().bays()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    name; ; Please name the bay.
                    toX; ; Please give the back of the bay.
                    fromX; 400; This side must have the smaller number of the two.
                    toY; 40; Please give both sides, or neither.
                    toZ; 4 oz; is not a length
                    """)
    void aBayThatCannotBeIsRefused(String field, String typed, String sentence) {
        Map<String, String> bay = new HashMap<>(Map.of("name", "Bay", "fromX", "160", "toX", "340"));
        bay.put(field, typed == null ? "" : typed);
        Page again = send("/new-bay", bay);
        String at = field.equals("toY") ? "fromY" : field;
        assertThat(FormWalk.error(again, at)).contains(sentence);
        assertThat(build().bays()).isEmpty();
    }

    @Test
    void twoPartsAreKeptApart() {
        send("/new-rule", Map.of("first", "L1", "second", "L2", "atLeast", "12 cm"));
        assertThat(build().keepApart()).hasSize(1);
        assertThat(build().keepApart().get(0).atLeast()).isEqualTo(Length.ofMm(120));
        String rule = "/rules/" + build().keepApart().get(0).id();
        send(rule, Map.of("atLeast", "90"));
        assertThat(build().keepApart().get(0).atLeast()).isEqualTo(Length.ofMm(90));
        Page form = browser.open(balance + rule);
        browser.post(balance + rule + "/remove", form, FormWalk.fields(form, Map.of()));
        assertThat(build().keepApart()).isEmpty();
    }

    @Test
    void aRuleNeedsTwoPartsAndADistance() {
        Page same = send("/new-rule", Map.of("first", "L1", "second", "L1", "atLeast", "120"));
        assertThat(FormWalk.error(same, "second")).contains("nothing can be kept apart from itself");
        Page none = send("/new-rule", Map.of());
        assertThat(FormWalk.error(none, "first")).contains("Please choose a part.");
        assertThat(FormWalk.error(none, "atLeast")).contains("how far apart");
    }
}
