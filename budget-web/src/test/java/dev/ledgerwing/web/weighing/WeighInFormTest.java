package dev.ledgerwing.web.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Booking;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.LinePlace;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.build.Station;
import dev.ledgerwing.core.build.Supply;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Entering a weighing, looking at it, recording and booking it. */
@PageTest
class WeighInFormTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    private final String code = "w" + UUID.randomUUID().toString().substring(0, 18);
    private final String form = "/airframes/" + code + "/weigh-ins/new";
    private Browser browser;

    @BeforeEach
    void openAnAirframe() {
        browser = SignedInBrowser.at(port);
        Build build = Build.blank(
                        new Airframe(code, "Airframe " + code, null, Stage.BUILD, "nose tip"),
                        new MassBudget(Mass.ofGrams(2000), null, null, null))
                .withAssemblies(List.of(
                        new Assembly("wing", "Wing", Assembly.MovesWith.WING),
                        new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                .withLines(List.of(line("L1", "wing", 1000, 600), line("L2", "nose", 500, 300)));
        desk.open(build, new Signature("Ines", ""));
    }

    private static PartLine line(String id, String assembly, double massG, double xMm) {
        return new PartLine(
                id,
                assembly,
                "Part " + id,
                Category.STRUCTURE,
                1,
                LineMass.of(Mass.ofGrams(massG), Basis.WEIGHED),
                LinePlace.at(Station.atX(Length.ofMm(xMm))),
                FitState.FITTED,
                Supply.NONE,
                null,
                List.of(),
                List.of(),
                PortNeeds.NONE);
    }

    /** 1560 g, 60 g more than the ledger says. */
    private static Map<String, String> readings() {
        return new HashMap<>(Map.ofEntries(
                Map.entry("support.0.x", "100"),
                Map.entry("support.0.reading", "0.56 kg"),
                Map.entry("support.0.tare", "40"),
                Map.entry("support.1.x", "700"),
                Map.entry("support.1.y", "-200"),
                Map.entry("support.1.reading", "520"),
                Map.entry("support.2.x", "700"),
                Map.entry("support.2.y", "200"),
                Map.entry("support.2.reading", "520"),
                Map.entry("do", "LOOK")));
    }

    private Build build() {
        return readings.head(code).build();
    }

    private Page press(Page page, String button) {
        return browser.post(form, page, FormWalk.fields(page, Map.of("do", button)));
    }

    @Test
    void theScalesAreHeldAgainstTheLedgerBeforeAnythingIsKept() {
        Page looked = FormWalk.send(browser, form, readings());

        assertThat(looked.status()).isEqualTo(200);
        assertThat(looked.text()).contains("+60\u2009g").contains("Record and book +60");
        assertThat(FormWalk.value(looked, "support.0.reading")).isEqualTo("0.56 kg");
        assertThat(build().weighIns()).isEmpty();
    }

    @Test
    void aDifferenceIsBookedAndASecondWeighingLeavesItAsItIs() {
        Page after = press(FormWalk.send(browser, form, readings()), "AS_ADVISED");

        assertThat(after.path()).isEqualTo("/airframes/" + code + "/balance");
        assertThat(after.document().select(".impact .change").text()).contains("1560\u2009g, +60\u2009g booked");
        Booking booked = Objects.requireNonNull(build().booking());
        assertThat(booked.mass()).isEqualTo(Mass.ofGrams(60));

        press(FormWalk.send(browser, form, readings()), "AS_ADVISED");
        assertThat(build().weighIns()).hasSize(2);
        assertThat(Objects.requireNonNull(build().booking()).mass()).isEqualTo(booked.mass());
        assertThat(Objects.requireNonNull(build().booking()).moments()).isEqualTo(booked.moments());
    }

    @Test
    void anAssemblyIsWeighedByItself() {
        Page looked = FormWalk.send(
                browser,
                form,
                Map.of("assembly", "wing", "support.0.x", "600", "support.0.reading", "1020", "do", "LOOK"));
        assertThat(looked.text()).contains("+20\u2009g").contains("One support tells the mass alone.");
        press(looked, "BOOK");
        assertThat(build().bookingOf("wing").map(Booking::mass)).contains(Mass.ofGrams(20));
        assertThat(build().booking()).isNull();
    }

    @Test
    void everyFieldOfASupportNamesItsUnit() {
        assertThat(browser.open(form).text())
                .contains("Support 1, to the right, mm", "Support 1, up, mm", "Support 1, reading, g", "Tilted, g");
    }

    @Test
    void weighingAgainOffersToKeepWhatIsBookedAndNotToBookItTwice() {
        press(FormWalk.send(browser, form, readings()), "AS_ADVISED");
        Page again = FormWalk.send(browser, form, readings());
        assertThat(again.text())
                .contains("The scales confirm what is booked", "Record, +60\u2009g stays booked")
                .doesNotContain("Record and book +60", "off by more than it admits");
    }

    @Test
    void aWeighingIsRecordedAloneBookedLaterAndRemoved() {
        press(FormWalk.send(browser, form, readings()), "LEAVE");
        assertThat(build().booking()).isNull();
        String address =
                "/airframes/" + code + "/weigh-ins/" + build().weighIns().get(0).id();
        Page shown = browser.open(address);
        assertThat(shown.text()).contains("Support 1").contains("+60\u2009g");
        browser.post(address + "/book", shown, Map.of("seen", "2", "choice", "BOOK"));
        assertThat(Objects.requireNonNull(build().booking()).mass()).isEqualTo(Mass.ofGrams(60));
        browser.post(address + "/remove", browser.open(address), Map.of("seen", "3"));
        assertThat(build().weighIns()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    name; ; Please name the weighing.
                    date; yesterday; Please give the day as year-month-day
                    case; none; Please choose one from the list.
                    assembly; none; Please choose one from the list.
                    support.0.reading; 20; This is below the tare of 40
                    support.0.reading; abc; is not a mass
                    support.0.reading; ; Please give what the scale shows here.
                    support.0.x; ; Please give where this support stands.
                    support.0.x; 3 kg; is not a length
                    support.1.x; 100 km; is not a length
                    step; -1; A mass is from 0 g to 1000 kg.
                    arms; ; Please give how sure the places of the supports are.
                    noseUp; 80; This is a number from −60 to 60.
                    support.1.tilted; 500; how far it was tilted
                    extra.0.name; Stand; has no mass
                    """)
    void whatCannotBeIsSaidAtItsField(String field, String typed, String sentence) {
        Map<String, String> wrong = readings();
        wrong.put(field, typed == null ? "" : typed);
        Page again = FormWalk.send(browser, form, wrong);

        assertThat(again.status()).isEqualTo(422);
        String at = field.equals("support.1.tilted") ? "tilt" : field.replace("extra.0.name", "extra.0.mass");
        assertThat(FormWalk.error(again, at)).contains(sentence);
        assertThat(FormWalk.value(again, "support.2.reading")).isEqualTo("520");
        assertThat(build().weighIns()).isEmpty();
    }

    @Test
    void supportsInOneLineOrAtOnePointAreSaid() {
        Map<String, String> line = readings();
        line.put("support.1.y", "0");
        line.put("support.2.y", "0");
        line.put("support.2.x", "400");
        assertThat(FormWalk.send(browser, form, line).text()).contains("The supports stand in one line");
        line.put("support.2.x", "700");
        Page again = FormWalk.send(browser, form, line);
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "support.2.x")).contains("stands at the same point");
    }

    @Test
    void whatIsTypedIsNeverMarkup() {
        Map<String, String> nasty = readings();
        nasty.put("name", "<b>x</b>");
        nasty.put("support.0.name", "<script>alert(1)</script>");
        Page looked = FormWalk.send(browser, form, nasty);
        assertThat(looked.document().select("main b, main script")).isEmpty();
        press(looked, "LEAVE");
        assertThat(browser.open("/airframes/" + code + "/balance").document().select("main b"))
                .isEmpty();
    }
}
