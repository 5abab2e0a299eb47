package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.FeedElement.SwitchedLoad;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Feeds and what the current passes through on them. */
class FeedFormTest extends PowerFormWalk {

    private static final String NEW = "/feeds/new";

    @BeforeEach
    void addEnds() {
        others(FeedFormTest::ended);
    }

    private static Build ended(Build build) {
        return build.withSources(List.of(PowerSource.external("bench", "Bench", 12.0, 5.0)))
                .withRails(List.of(
                        new Rail("drive", "Drive", 12.0, null, null, false),
                        new Rail("main", "Main", 5.0, null, null, false)));
    }

    private static Map<String, String> wired() {
        Map<String, String> typed = new HashMap<>(Map.of("from", "bench", "to", "main"));
        typed.putAll(Map.of(
                "element.0.kind", "WIRE",
                "element.0.awg", "18",
                "element.0.length", "85 mm",
                "element.0.conductors", "3",
                "element.0.routing", "FREE_AIR",
                "element.0.insulation", "200 °C"));
        typed.putAll(Map.of(
                "element.1.kind", "REGULATOR",
                "element.1.name", "Step-down",
                "element.1.type", "SWITCHING",
                "element.1.output", "5 V",
                "element.1.efficiency", "90 %",
                "element.1.minInput", "6.5",
                "element.1.maxInput", "30",
                "element.1.quiescent", "8 mA",
                "element.1.rating", "5 A",
                "element.1.peak", "8"));
        typed.putAll(Map.of(
                "element.2.kind", "SWITCH",
                "element.2.rating", "10",
                "element.2.resistance", "2,5 mΩ",
                "element.2.count", "2",
                "element.2.sharing", "JOINED",
                "element.2.switched", "MOTOR"));
        typed.putAll(Map.of("element.3.kind", "DIODE", "element.3.forward", "450 mV", "element.3.rating", "10"));
        return typed;
    }

    private Feed feed() {
        return build().power().feeds().get(0);
    }

    @Test
    void aFeedIsAddedWithWhatTheCurrentPassesThrough() {
        Page after = send(NEW, wired());

        assertThat(after.path()).isEqualTo(power);
        assertThat(title()).isEqualTo("Feed Bench to Main added");
        WireRun run = new WireRun(18, Length.ofMm(85), 3, WireRun.Routing.FREE_AIR, 200.0);
        Regulator regulator = new Regulator(Regulator.Type.SWITCHING, 5, 90.0, null, 6.5, 30.0, 0.008);
        FeedElement switches = new FeedElement(
                "Switch", Kind.SWITCH, 10.0, null, 2, Sharing.JOINED, 2.5, null, SwitchedLoad.MOTOR, null, null);
        assertThat(feed())
                .isEqualTo(new Feed(
                        "bench-to-main",
                        "Bench to Main",
                        "bench",
                        "main",
                        List.of(
                                FeedElement.wire("Wire", run),
                                FeedElement.regulator("Step-down", 5.0, 8.0, regulator),
                                switches,
                                FeedElement.diode("Diode", 10.0, 0.45))));
    }

    @Test
    void lookingAndSavingAgainChangesNothing() {
        send(NEW, wired());
        int before = number();
        Page form = browser.open(power + "/feeds/bench-to-main");
        assertThat(FormWalk.value(form, "element.1.quiescent")).isEqualTo("0.008");
        sendOn(form, "/feeds/bench-to-main", Map.of());
        assertThat(number()).isEqualTo(before);
        Page looked = sendOn(form, "/feeds/bench-to-main", Map.of("do", "LOOK", "element.2.count", "3"));
        assertThat(looked.status()).isEqualTo(200);
        assertThat(FormWalk.value(looked, "element.2.count")).isEqualTo("3");
        assertThat(number()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({
        "WIRE, awg, length, output forward switched",
        "CONNECTOR, rating, resistance, awg output forward switched",
        "FUSE, rating, peak, awg output forward switched",
        "BREAKER, rating, peak, awg output forward switched",
        "SWITCH, switched, rating, awg output forward",
        "SENSOR, rating, resistance, awg output forward switched",
        "DIODE, forward, rating, awg output switched",
        "REGULATOR, output, efficiency, awg forward switched",
        "MOTOR_CONTROLLER, rating, peak, awg output forward switched"
    })
    void aRowShowsTheFieldsOfItsKind(String kind, String one, String other, String others) {
        Page added = press(browser.open(power + NEW), NEW, "add:element:" + kind);
        assertThat(added.status()).isEqualTo(200);
        assertThat(FormWalk.value(added, "element.0.kind")).isEqualTo(kind);
        assertThat(added.document().select("[name=element.0." + one + "], [name=element.0." + other + "]"))
                .hasSize(2);
        for (String missing : others.split(" ", -1)) {
            assertThat(added.document().select("[name=element.0." + missing + "]"))
                    .isEmpty();
        }
    }

    @Test
    void wiresThatNothingIsSaidOfLieInABundle() {
        Page added = press(browser.open(power + NEW), NEW, "add:element:WIRE");
        assertThat(added.document()
                        .expectFirst("[name=element.0.routing] option")
                        .val())
                .isEqualTo("BUNDLE");
    }

    @Test
    void rowsAreAddedMovedAndTakenOutAndKeepWhatWasTyped() {
        Page form = browser.open(power + NEW);
        Page filled = sendOn(form, NEW, with(wired(), "row", "add:element:FUSE"));
        Page moved = press(filled, NEW, "earlier:element:4");
        assertThat(FormWalk.value(moved, "element.3.kind")).isEqualTo("FUSE");
        assertThat(FormWalk.value(moved, "element.4.forward")).isEqualTo("450 mV");
        Page later = press(moved, NEW, "later:element:0");
        assertThat(FormWalk.value(later, "element.1.length")).isEqualTo("85 mm");
        assertThat(later.document()
                        .select("[name=element.1.routing] [selected]")
                        .val())
                .isEqualTo("FREE_AIR");
        Page removed = press(later, NEW, "remove:element:0");
        assertThat(FormWalk.value(removed, "element.0.length")).isEqualTo("85 mm");
        assertThat(removed.document().select("[name=element.4.kind]")).isEmpty();
        assertThat(build().power().feeds()).isEmpty();

        sendOn(removed, NEW, Map.of("element.2.rating", "7.5 A"));
        assertThat(feed().elements())
                .extracting(FeedElement::kind)
                .containsExactly(Kind.WIRE, Kind.SWITCH, Kind.FUSE, Kind.DIODE);
    }

    private static Map<String, String> with(Map<String, String> typed, String field, String text) {
        Map<String, String> more = new HashMap<>(typed);
        more.put(field, text);
        return more;
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            from; ; Please choose the source or rail it comes from.
            from; gone; not there any more
            to; ; Please choose the rail it leads to.
            to; bench; not there any more
            element.0.awg; ; Please choose how thick
            element.0.awg; 99; not there any more
            element.0.length; ; Please give how long
            element.0.length; -1; This is from 0 mm to 100 m.
            element.0.length; 2 kg; is not a length
            element.0.conductors; 1; This is a whole number from 2 to 100.
            element.0.routing; AIR; Please choose one from the list.
            element.0.insulation; 20; This is from 40 to 600
            element.0.rating; -5 A; This is from 0.001 to 2000
            element.0.rating; 1e9; This is from 0.001 to 2000
            element.1.output; ; Please give the voltage it makes.
            element.1.output; 0; This is from 0.1 to 1000
            element.1.type; MAGIC; Please choose one from the list.
            element.1.efficiency; 101 %; This is from 1 to 100
            element.1.dropout; 101; This is from 0 to 100
            element.1.minInput; 31; the smaller of the two
            element.1.maxInput; 1001; This is from 0 to 1000
            element.1.quiescent; -1; This is from 0 to 100
            element.1.peak; 4; carries at least as much
            element.1.peak; 9000; This is from 0.001 to 5000
            element.2.count; 0; This is a whole number from 1 to 20.
            element.2.count; 21; This is a whole number from 1 to 20.
            element.2.sharing; ; how several of them share
            element.2.sharing; ALONE; Please choose one from the list.
            element.2.switched; PUMP; Please choose one from the list.
            element.2.resistance; 100001; This is from 0 to 100000
            element.3.forward; 6; This is from 0 to 5
            element.3.forward; 5 A; is not a voltage
            element.3.rating; ten; is not a current
            """)
    void aFeedThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new FeedForm(null), ended(airframe("godwit")), wired());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        Map<String, String> wrong = wired();
        List.of("from", "to").forEach(end -> wrong.put(end, ""));
        wrong.keySet().removeIf(field -> field.matches(".*(kind|name|routing|type|sharing|switched)"));
        wrong.replaceAll((field, typed) -> typed.isEmpty() || field.endsWith("awg") ? "" : "x");
        wrong.putAll(Map.of("element.1.dropout", "-1"));
        Map<String, String> kinds = new HashMap<>(wrong);
        for (int i = 0; i < 4; i++) {
            kinds.put("element." + i + ".kind", wired().get("element." + i + ".kind"));
        }
        Page again = send(NEW, kinds);
        assertThat(again.status()).isEqualTo(422);
        wrong.forEach((field, typed) -> {
            assertThat(FormWalk.error(again, field)).endsWith(".");
            assertThat(again.document().expectFirst("[id=" + field + "]").attr("aria-describedby"))
                    .contains(field + "-error");
        });
    }

    @Test
    void aRailDoesNotFeedItself() {
        Page again = send(NEW, Map.of("from", "main", "to", "main"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "to")).contains("A rail cannot feed itself");
    }

    @Test
    void aKindThatThereIsNotIsRefusedToo() {
        Page again = send(NEW, with(wired(), "element.0.kind", "MAGIC"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "element.0.kind")).contains("Please choose one from the list.");
    }

    @Test
    void aFeedIsRemoved() {
        send(NEW, wired());
        remove("/feeds/bench-to-main");
        assertThat(build().power().feeds()).isEmpty();
        assertThat(title()).isEqualTo("Feed Bench to Main removed");
    }

    @Test
    void twoWhoChangeTheElementsClashAndTheRowsStayTogether() {
        send(NEW, wired());
        Page form = browser.open(power + "/feeds/bench-to-main");
        others(build -> build.withFeeds(List.of(new Feed(
                "bench-to-main",
                "Bench to Main",
                "bench",
                "main",
                List.of(FeedElement.rated("Fuse", Kind.FUSE, 7.5))))));
        Page again = sendOn(form, "/feeds/bench-to-main", Map.of("element.3.rating", "12"));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select(".notice.problem").text()).contains("What you typed is still here");
        assertThat(FormWalk.value(again, "element.0.kind")).isEqualTo("WIRE");
        assertThat(FormWalk.value(again, "element.3.rating")).isEqualTo("12");
    }

    @Test
    void whoRenamesAFeedKeepsTheElementsOfOthers() {
        send(NEW, wired());
        Page form = browser.open(power + "/feeds/bench-to-main");
        others(build ->
                build.withFeeds(List.of(new Feed("bench-to-main", "Bench to Main", "bench", "main", List.of()))));
        sendOn(form, "/feeds/bench-to-main", Map.of("name", "Leg one"));
        assertThat(feed().name()).isEqualTo("Leg one");
        assertThat(feed().elements()).isEmpty();
    }

    @Test
    void theDrawingBesideFollowsWhatIsTyped() {
        Page empty = browser.open(power + NEW);
        assertThat(empty.document().select(".picture h3").text()).isEqualTo("The supply as recorded");
        Page looked = sendOn(empty, NEW, with(with(wired(), "element.1.name", "Step-down of the bench"), "do", "LOOK"));
        assertThat(looked.status()).isEqualTo(200);
        assertThat(looked.document().select(".picture h3").text()).isEqualTo("The supply with this feed");
        assertThat(looked.document().select(".picture svg").text()).contains("Step-down");
        Page removed = press(looked, NEW, "remove:element:1");
        assertThat(removed.document().select(".picture svg").text()).doesNotContain("Step-down");
        assertThat(build().power().feeds()).isEmpty();
    }

    @Test
    void withoutASourceOrARailThePageSaysWhatToAddFirst() {
        others(build -> build.withSources(List.of()).withRails(List.of()));
        Page form = browser.open(power + NEW);
        assertThat(form.document().select(".notice a[href=" + power + "/rails/new]"))
                .hasSize(1);
        assertThat(form.text()).contains("There is no source yet");
    }
}
