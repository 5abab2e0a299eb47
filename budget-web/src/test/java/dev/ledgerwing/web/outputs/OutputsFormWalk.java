package dev.ledgerwing.web.outputs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.support.Browser;
import dev.ledgerwing.web.support.Browser.Page;
import dev.ledgerwing.web.support.PageTest;
import dev.ledgerwing.web.team.SignedInBrowser;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** An airframe with a controller, servos and a sensor in its ledger, and a browser to fill in forms on its outputs. */
@PageTest
abstract class OutputsFormWalk {

    @LocalServerPort
    int port;

    @Autowired
    Readings readings;

    @Autowired
    Desk desk;

    final String code = "o" + UUID.randomUUID().toString().substring(0, 18);
    final String outputs = "/airframes/" + code + "/outputs";
    Browser browser;

    OutputsFormWalk() {
        browser = new Browser(0);
    }

    @BeforeEach
    void openAnAirframe() {
        browser = SignedInBrowser.at(port);
        desk.open(airframe(code), new Signature("Ines", ""));
    }

    static Build airframe(String code) {
        Build blank = Build.blank(
                new Airframe(code, "Airframe " + code, null, Stage.DESIGN, "nose tip"),
                new MassBudget(Mass.ofGrams(2000), null, null, null));
        return blank.withAssemblies(List.of(new Assembly("nose", "Nose", Assembly.MovesWith.NOSE)))
                .withLines(List.of(
                        line("L1", "Flight controller", Category.AVIONICS, 1),
                        line("L2", "Aileron servo", Category.SERVO, 2),
                        line("L3", "Elevator servo", Category.SERVO, 1),
                        line("L4", "Airspeed sensor", Category.AVIONICS, 1),
                        line("L5", "Spar", Category.STRUCTURE, 2)));
    }

    private static PartLine line(String id, String name, Category category, int quantity) {
        return PartLine.named(id, "nose", name, category, quantity, LineMass.of(Mass.ofGrams(20), Basis.WEIGHED));
    }

    Build build() {
        return readings.head(code).build();
    }

    String title() {
        return readings.head(code).revision().title();
    }

    int number() {
        return readings.head(code).revision().number();
    }

    /** Somebody else changes the record meanwhile. */
    void others(Deed.Wanted wanted) {
        Outcome outcome = desk.change(
                new Seen(code, number()), Deed.fitting("others were here", wanted), new Signature("Ines", ""));
        assertThat(outcome).isInstanceOf(Outcome.Landed.class);
    }

    Page send(String form, Map<String, String> typed) {
        return FormWalk.send(browser, outputs + form, typed);
    }

    /** Sends the form as it stands on a page, some fields typed over. */
    Page sendOn(Page page, String form, Map<String, String> typed) {
        return browser.post(outputs + form, page, FormWalk.fields(page, typed));
    }

    Page press(Page page, String form, String button) {
        return sendOn(page, form, Map.of("row", button));
    }

    /** Presses one of the buttons that take something out of the record. */
    Page remove(String element) {
        Page form = browser.open(outputs + element);
        return browser.post(outputs + element + "/remove", form, FormWalk.fields(form, Map.of()));
    }

    /** Sends a form in which everything is wrong, and checks that each field says so and keeps what was typed. */
    void refusedEverywhere(String form, Map<String, String> wrong) {
        int before = number();
        Page again = send(form, wrong);
        assertThat(again.status()).isEqualTo(422);
        wrong.forEach((field, typed) -> {
            Element control = again.document().expectFirst("[id=" + field + "]");
            assertThat(control.attr("aria-invalid")).as(field).isEqualTo("true");
            assertThat(control.attr("aria-describedby")).contains(field + "-error");
            assertThat(FormWalk.error(again, field)).endsWith(".");
            if (control.tagName().equals("input")) {
                assertThat(control.val()).isEqualTo(typed);
            }
        });
        assertThat(number()).isEqualTo(before);
    }
}
