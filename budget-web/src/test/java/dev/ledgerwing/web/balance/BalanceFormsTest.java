package dev.ledgerwing.web.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.ledgerwing.core.build.BalanceLimits;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Geometry;
import dev.ledgerwing.core.build.Panel;
import dev.ledgerwing.core.build.StaticMargin;
import dev.ledgerwing.core.build.Surface;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import dev.ledgerwing.web.team.TestMember;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.MockMvc;

/** Entering wing, tail and limits. */
@PageTest
class BalanceFormsTest {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    @Autowired
    MockMvc mvc;

    private final String code = "g" + UUID.randomUUID().toString().substring(0, 18);
    private final String balance = "/airframes/" + code + "/balance";
    private Browser browser;

    @BeforeEach
    void openAnAirframe() {
        browser = SignedInBrowser.at(port);
        desk.open(BalanceAirframes.withWingAndPack(code), new Signature("Ines", ""));
    }

    @AfterEach
    void readGramsAgain() {
        read(UnitSystem.GRAM_MILLIMETRE);
    }

    private void read(UnitSystem units) {
        browser.post("/units", browser.open("/"), Map.of("units", units.name()));
    }

    private Page send(String form, Map<String, String> typed) {
        return FormWalk.send(browser, balance + form, typed);
    }

    private Geometry geometry() {
        return readings.head(code).build().geometry();
    }

    private static Map<String, String> wing() {
        return Map.of(
                "wing.x", "520 mm",
                "wing.z", "60",
                "wing.panel.0.span", "0.9 m",
                "wing.panel.0.root", "320",
                "wing.panel.0.tip", "200",
                "wing.panel.0.offset", "40");
    }

    @Test
    void aWingIsEnteredOnceAndAnsweredAtOnce() {
        Page after = send("/geometry", wing());

        assertThat(after.path()).isEqualTo(balance);
        assertThat(after.document().select(".impact .change").text()).isEqualTo("Wing entered");
        Surface wing = Objects.requireNonNull(geometry().wing());
        assertThat(wing.mirrored()).isTrue();
        assertThat(wing.panels())
                .containsExactly(new Panel(Length.ofMm(900), Length.ofMm(320), Length.ofMm(200), Length.ofMm(40), 0));
        assertThat(geometry().tail()).isNull();
    }

    @Test
    void anEmptyRootChordGoesOnFromTheTipBeforeIt() {
        Map<String, String> two = new HashMap<>(wing());
        two.put("wing.panel.1.span", "300");
        two.put("wing.panel.1.tip", "120");
        send("/geometry", two);

        assertThat(Objects.requireNonNull(geometry().wing()).panels())
                .extracting(panel -> panel.rootChord().mm())
                .containsExactly(320.0, 200.0);
    }

    @Test
    void rowsComeAndGoWithoutScriptAndLoseNothing() {
        Map<String, String> more = new HashMap<>(wing());
        more.put("row", "add:wing.panel");
        Page added = send("/geometry", more);

        assertThat(added.status()).isEqualTo(200);
        assertThat(FormWalk.value(added, "wing.panel.0.span")).isEqualTo("0.9 m");
        assertThat(FormWalk.value(added, "wing.panel.1.span")).isEmpty();

        Map<String, String> less = new HashMap<>(FormWalk.fields(added, Map.of("wing.panel.1.span", "77")));
        less.put("row", "remove:wing.panel:0");
        Page removed = browser.post(balance + "/geometry", added, less);
        assertThat(FormWalk.value(removed, "wing.panel.0.span")).isEqualTo("77");
        assertThat(removed.document().select("[name=wing.panel.1.span]")).isEmpty();
        assertThat(geometry()).isEqualTo(Geometry.NONE);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    wing.panel.0.span; 0; A panel without span has no area.
                    wing.panel.0.span; ; Please give the span of this panel.
                    wing.panel.0.tip; -20; This is from 0 mm to 100 m.
                    wing.panel.0.root; 0; A panel needs a chord above 0 at its root or at its tip.
                    wing.panel.0.root; abc; is not a length
                    wing.panel.0.root; 3 kg; is not a length
                    wing.panel.0.offset; 200 km; is not a length
                    wing.panel.0.offset; 200 m; at most 100 m from the datum
                    wing.panel.0.dihedral; 120; This is a number from −90 to 90.
                    wing.x; ; Please give how far aft of the datum it is, too.
                    efficiency; 3; This is a number from 0.05 to 1.5.
                    bodyShift; x; is not a number
                    noseStructure; -1; This is a number from 0 to 1000.
                    stationUncertainty; -2 mm; This is from 0 mm to 100 m.
                    """)
    void whatCannotBeIsSaidAtItsFieldAndKept(String field, String typed, String sentence) {
        Map<String, String> wrong = new HashMap<>(wing());
        wrong.put(field, typed == null ? "" : typed);
        if (field.equals("wing.panel.0.root") && "0".equals(typed)) {
            wrong.put("wing.panel.0.tip", "0");
        }
        Page again = send("/geometry", wrong);

        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, field)).isEqualTo(typed == null ? "" : typed);
        assertThat(FormWalk.error(again, field)).contains(sentence);
        assertThat(again.document().expectFirst("[id=" + field + "]").attr("aria-invalid"))
                .isEqualTo("true");
        assertThat(FormWalk.value(again, "wing.z")).isEqualTo("60");
        assertThat(geometry()).isEqualTo(Geometry.NONE);
    }

    @Test
    void aWingIsRemovedAndItsRemovalTakenBack() {
        send("/geometry", wing());
        Page form = browser.open(balance + "/geometry");
        Page after = browser.post(balance + "/surfaces/wing/remove", form, FormWalk.fields(form, Map.of()));

        assertThat(after.document().select(".impact .change").text()).isEqualTo("Wing removed");
        assertThat(geometry().wing()).isNull();
        Page undone = browser.send(after, "/airframes/" + code + "/undo", Map.of());
        assertThat(undone.path()).isEqualTo(balance);
        assertThat(geometry().wing()).isNotNull();
    }

    @Test
    void lookingInInchesRoundsNothing() {
        send("/geometry", wing());
        Geometry before = geometry();
        read(UnitSystem.OUNCE_INCH);
        Page form = browser.open(balance + "/geometry");
        assertThat(FormWalk.value(form, "wing.x")).isEqualTo("20.472");
        Page after = browser.post(balance + "/geometry", form, FormWalk.fields(form, Map.of("efficiency", "")));
        assertThat(after.document().select(".impact .change").text()).isEqualTo("Nothing changed");
        assertThat(geometry()).isEqualTo(before);

        browser.post(balance + "/geometry", form, FormWalk.fields(form, Map.of("wing.panel.0.tip", "8")));
        assertThat(Objects.requireNonNull(geometry().wing()).panels().get(0).tipChord())
                .isEqualTo(Length.ofMm(203.2));
    }

    @Test
    void theTwoFiguresOfAKitAreKeptFromTheDatum() {
        Page after = send(
                "/limits", Map.of("kind", "LENGTH", "forward", "95", "aft", "10,5 cm", "from", "520", "reason", "kit"));

        assertThat(after.path()).isEqualTo(balance);
        assertThat(geometry().balanceLimits()).isEqualTo(BalanceLimits.ofStations(Length.ofMm(615), Length.ofMm(625)));
        assertThat(readings.head(code).revision().title()).isEqualTo("Balance limits 615 to 625\u2009mm");
        assertThat(readings.head(code).revision().reason()).isEqualTo("kit");
        Page form = browser.open(balance + "/limits");
        assertThat(FormWalk.value(form, "forward")).isEqualTo("615");
        assertThat(FormWalk.value(form, "from")).isEmpty();
    }

    @Test
    void limitsAreDeclaredInPerCentOrNotAtAll() {
        send("/limits", Map.of("kind", "PERCENT", "forwardPercent", "28", "aftPercent", "38 %"));
        assertThat(geometry().balanceLimits()).isEqualTo(BalanceLimits.ofPercentMac(28, 38));
        send("/limits", Map.of("kind", "NONE", "least", "5", "most", "15"));
        assertThat(geometry().balanceLimits()).isNull();
        assertThat(geometry().staticMargin()).isEqualTo(new StaticMargin(5, 15));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    LENGTH; forward; 105; aft; 95; forward; The forward limit lies ahead of the aft one
                    LENGTH; forward; 95; aft; ; aft; Please give both limits
                    LENGTH; forward; 95; aft; 105 kg; aft; is not a length
                    LENGTH; forward; 90 m; aft; 99 m; from; lie more than 100 m from the datum
                    PERCENT; forwardPercent; 38; aftPercent; 28; forwardPercent; The forward limit lies ahead of the aft one
                    PERCENT; forwardPercent; ; aftPercent; 28; forwardPercent; Please give both limits
                    PERCENT; forwardPercent; 28; aftPercent; 38; least; Please give both margins
                    ELSEWHERE; forward; 95; aft; 105; kind; Please choose one from the list.
                    """)
    void limitsThatCannotBeAreRefused(
            String kind, String first, String typed, String second, String other, String field, String sentence) {
        Map<String, String> wrong = new HashMap<>(Map.of("kind", kind, first, typed == null ? "" : typed));
        wrong.put(second, other == null ? "" : other);
        if (field.equals("least")) {
            wrong.put("most", "15");
        }
        if (field.equals("from")) {
            wrong.put("from", "90 m");
        }
        Page again = send("/limits", wrong);

        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, field)).contains(sentence);
        assertThat(geometry()).isEqualTo(Geometry.NONE);
    }

    @Test
    void whatOthersStoredMeanwhileIsMergedOrShownWithWhatWasTyped() {
        Page form = browser.open(balance + "/limits");
        desk.change(
                new Seen(code, 1),
                Deed.fitting(
                        "limits",
                        build -> build.withGeometry(
                                build.geometry().withBalanceLimits(BalanceLimits.ofPercentMac(20, 30)))),
                new Signature("Ines", ""));
        Page again = browser.post(
                balance + "/limits",
                form,
                FormWalk.fields(form, Map.of("kind", "PERCENT", "forwardPercent", "25", "aftPercent", "35")));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select(".notice.problem").text()).contains("What you typed is still here");
        assertThat(FormWalk.value(again, "forwardPercent")).isEqualTo("25");
        assertThat(FormWalk.value(again, "seen")).isEqualTo("2");
        browser.post(balance + "/limits", again, FormWalk.fields(again, Map.of()));
        assertThat(geometry().balanceLimits()).isEqualTo(BalanceLimits.ofPercentMac(25, 35));
    }

    @Test
    void whatIsTypedIsNeverMarkup() {
        Page again = send("/limits", Map.of("kind", "LENGTH", "forward", "<script>alert(1)</script>", "aft", "\"><b>"));
        assertThat(again.document().select("main script, main b")).isEmpty();
        assertThat(FormWalk.value(again, "aft")).isEqualTo("\"><b>");
    }

    @Test
    void aPageThatIsIncompleteChangesNothing() throws Exception {
        int status = mvc.perform(
                        post(balance + "/limits").with(TestMember.mara()).with(csrf()))
                .andReturn()
                .getResponse()
                .getStatus();
        assertThat(status).isEqualTo(400);
        assertThat(mvc.perform(post(balance + "/limits").with(csrf()).param("seen", "1"))
                        .andReturn()
                        .getResponse()
                        .getStatus())
                .isIn(302, 401, 403);
        assertThat(build().geometry()).isEqualTo(Geometry.NONE);
    }

    private Build build() {
        return readings.head(code).build();
    }

    @Test
    void anAddressWithASlipIsNotFound() {
        assertThat(browser.open(balance + "/nothing").status()).isEqualTo(404);
        assertThat(browser.open(balance + "/cases/nothing").status()).isEqualTo(404);
        assertThat(browser.open(balance + "/elsewhere/nothing").status()).isEqualTo(404);
    }
}
