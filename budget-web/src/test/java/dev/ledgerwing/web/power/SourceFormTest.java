package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Batteries, solar cells and supplies from outside. */
class SourceFormTest extends PowerFormWalk {

    private static final String BATTERY = "/sources/new?kind=battery";
    private static final String SOLAR = "/sources/new?kind=solar";
    private static final String EXTERNAL = "/sources/new?kind=external";

    private static Map<String, String> battery() {
        return Map.ofEntries(
                Map.entry("name", "Flight pack"),
                Map.entry("part", "L1"),
                Map.entry("chemistry", "LITHIUM_POLYMER"),
                Map.entry("series", "6"),
                Map.entry("parallel", "2"),
                Map.entry("capacity", "10 Ah"),
                Map.entry("continuous", "15 C"),
                Map.entry("burst", "30"),
                Map.entry("resistance", "1,5 mΩ"),
                Map.entry("usable", "80 %"),
                Map.entry("charge", "2"),
                Map.entry("cutOff", "on"),
                Map.entry("reason", "measured"));
    }

    private static Map<String, String> cells() {
        return Map.of(
                "name", "Wing cells",
                "maxPower", "60 W",
                "maxPowerVoltage", "18,5 V",
                "openCircuit", "22",
                "shortCircuit", "3400 mA",
                "powerPerC", "-0,4 %",
                "voltagePerC", "−0.3",
                "tilt", "4°",
                "connection", "TRACKER",
                "tracker", "95");
    }

    @Test
    void aBatteryIsEnteredWithItsUnits() {
        Page after = send(BATTERY, battery());

        assertThat(after.path()).isEqualTo(power);
        assertThat(title()).isEqualTo("Source Flight pack added");
        assertThat(readings.head(code).revision().reason()).isEqualTo("measured");
        Pack pack = new Pack(
                Pack.Chemistry.LITHIUM_POLYMER, 6, 2, 10_000.0, 15.0, 30.0, 1.5, 80.0, 2.0, null, null, null, true);
        assertThat(build().power().sources())
                .containsExactly(PowerSource.battery("flight-pack", "Flight pack", "L1", pack));
    }

    @Test
    void aBatteryIsEditedAndKeepsItsCode() {
        send(BATTERY, battery());
        Page form = browser.open(power + "/sources/flight-pack");
        assertThat(FormWalk.value(form, "capacity")).isEqualTo("10000");
        sendOn(form, "/sources/flight-pack", Map.of("name", "Main pack", "capacity", "8000 mAh", "burst", ""));

        PowerSource source = build().power().sources().get(0);
        assertThat(source.code()).isEqualTo("flight-pack");
        assertThat(source.name()).isEqualTo("Main pack");
        assertThat(Objects.requireNonNull(source.pack()).cellCapacityMah()).isEqualTo(8000);
        assertThat(source.pack().burstC()).isNull();
        assertThat(title()).isEqualTo("Source Main pack edited");
    }

    @Test
    void solarCellsAreEnteredAndCanBeStoppedByAFunction() {
        others(build -> build.withFunctions(List.of(new RadioFunction(
                "charging",
                "Charging",
                RadioFunction.Kind.SWITCHED,
                List.of("off", "on"),
                RadioFunction.Criticality.MISSION,
                false))));
        Page form = browser.open(power + SOLAR);
        sendOn(form, SOLAR, withStop());

        assertThat(Objects.requireNonNull(build().power().sources().get(0).array()))
                .isEqualTo(new SolarArray(
                        60.0,
                        18.5,
                        22.0,
                        3.4,
                        -0.4,
                        -0.3,
                        4,
                        90,
                        true,
                        SolarArray.Connection.TRACKER,
                        95.0,
                        "charging"));
        Page again = browser.open(power + "/sources/wing-cells");
        assertThat(FormWalk.value(again, "voltagePerC")).isEqualTo("−0.3");
        assertThat(again.document().select("[name=stop] [selected]").text()).isEqualTo("Charging");
    }

    private static Map<String, String> withStop() {
        Map<String, String> typed = new HashMap<>(cells());
        typed.put("stop", "charging");
        return typed;
    }

    @Test
    void aSupplyFromOutsideHasAVoltageAndARating() {
        send(EXTERNAL, Map.of("name", "Bench supply", "output", "5,1 V", "rating", "800 mA"));
        assertThat(build().power().sources())
                .containsExactly(PowerSource.external("bench-supply", "Bench supply", 5.1, 0.8));
    }

    @Test
    void whatIsNotKnownStaysEmpty() {
        send(BATTERY, Map.of("name", "Pack", "series", "3"));
        Pack pack = Objects.requireNonNull(build().power().sources().get(0).pack());
        assertThat(pack.parallelCells()).isEqualTo(1);
        assertThat(pack.cellCapacityMah()).isNull();
        assertThat(pack.usablePercent()).isNull();
        assertThat(pack.automaticCutOff()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            name; ; Please name the source.
            part; L99; not there any more
            chemistry; PEAT; Please choose one from the list.
            series; ; Please give how many are in line.
            series; 0; This is a whole number from 1 to 200.
            series; 2.5; This is a whole number from 1 to 200.
            series; six; is not a number
            parallel; 0; This is a whole number from 1 to 200.
            parallel; 201; This is a whole number from 1 to 200.
            capacity; 0; This is from 1 to 1000000
            capacity; -5; This is from 1 to 1000000
            capacity; 10 A; is not a capacity
            capacity; lots; is not a capacity
            continuous; 0; This is from 0.01 to 500
            continuous; 15 A; is not a multiple of the capacity
            burst; 1001; This is from 0.01 to 1000
            burst; 10; at least as much
            resistance; -1; This is from 0 to 10000
            resistance; 2 V; is not a resistance
            usable; 0; This is from 1 to 100
            usable; 101 %; This is from 1 to 100
            charge; 101; This is from 0.01 to 100
            full; 11; This is from 0.1 to 10
            nominal; 4 A; is not a voltage
            empty; NaN; is not a voltage
            """)
    void aBatteryThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new SourceForm(null, PowerSource.Kind.BATTERY), airframe("godwit"), battery());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        Map<String, String> wrong = new HashMap<>(battery());
        List.of("cutOff", "reason", "part", "chemistry").forEach(wrong::remove);
        wrong.replaceAll((field, typed) -> field.equals("name") ? "" : "x");
        wrong.putAll(Map.of("full", "y", "nominal", "<b>", "empty", "-1"));
        refusedEverywhere(BATTERY, wrong);
        Map<String, String> cells = new HashMap<>(cells());
        List.of("name", "connection").forEach(cells::remove);
        cells.replaceAll((field, typed) -> "x");
        refusedEverywhere(SOLAR, cells);
        refusedEverywhere(EXTERNAL, Map.of("name", "", "output", "x", "rating", "-1"));
    }

    @Test
    void cellsOfAnotherKindNeedTheirVoltagesInOrder() {
        Map<String, String> other = new HashMap<>(battery());
        other.put("chemistry", "OTHER");
        Page none = send(BATTERY, other);
        assertThat(FormWalk.error(none, "full")).contains("need their three voltages");
        assertThat(FormWalk.error(none, "nominal")).contains("need their three voltages");
        assertThat(FormWalk.error(none, "empty")).contains("need their three voltages");
        Page wrong = sendOn(none, BATTERY, Map.of("full", "2.7", "nominal", "2.3", "empty", "2.3"));
        assertThat(FormWalk.error(wrong, "empty")).contains("an empty one the lowest");
        sendOn(wrong, BATTERY, Map.of("empty", "1.8"));
        assertThat(build().power().sources()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            maxPower; 0; This is from 0.001 to 100000
            maxPower; 60 V; is not a power
            maxPowerVoltage; 23; below the open-circuit voltage
            openCircuit; 0; This is from 0.01 to 1000
            shortCircuit; 1001; This is from 0.001 to 1000
            powerPerC; 9; This is from −5 to 5
            voltagePerC; -6; This is from −5 to 5
            tilt; 91; This is from 0 to 90
            tilt; flat; is not an angle
            connection; ROPE; Please choose one from the list.
            tracker; 101; This is from 1 to 100
            stop; charging; not there any more
            """)
    void cellsThatCannotBeAreRefusedAtTheirField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new SourceForm(null, PowerSource.Kind.SOLAR), airframe("godwit"), cells());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            output; 0; This is from 0.1 to 1000
            output; ten; is not a voltage
            rating; -5; This is from 0.001 to 2000
            rating; 3000; This is from 0.001 to 2000
            """)
    void aSupplyThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Map<String, String> bench = Map.of("name", "Bench", "output", "5", "rating", "2");
        Troubles troubles = new Troubles(new SourceForm(null, PowerSource.Kind.EXTERNAL), airframe("godwit"), bench);
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void aSourceIsRemovedWithItsFeedsAndTheButtonSaysSo() {
        send(BATTERY, battery());
        others(build -> build.withRails(List.of(new Rail("main", "Main", 5.0, null, null, false)))
                .withFeeds(List.of(
                        new Feed("one", "Leg one", "flight-pack", "main", List.of()),
                        new Feed("two", "Leg two", "flight-pack", "main", List.of()))));
        Page form = browser.open(power + "/sources/flight-pack");
        assertThat(form.text()).contains("Leg one, Leg two").contains("Remove with its 2 feeds");
        remove("/sources/flight-pack");

        assertThat(build().power().sources()).isEmpty();
        assertThat(build().power().feeds()).isEmpty();
        assertThat(build().power().rails()).hasSize(1);
        assertThat(title()).isEqualTo("Source Flight pack removed with its 2 feeds");
    }

    @Test
    void twoChangesOfOneFieldClashAndNothingIsLost() {
        send(BATTERY, battery());
        Page form = browser.open(power + "/sources/flight-pack");
        others(build -> build.withSources(List.of(PowerSource.battery(
                "flight-pack",
                "Flight pack",
                "L1",
                pack(build().power().sources().get(0), 5000)))));
        Page again = sendOn(form, "/sources/flight-pack", Map.of("capacity", "9 Ah"));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.document().select(".notice.problem").text()).contains("What you typed is still here");
        assertThat(FormWalk.value(again, "capacity")).isEqualTo("9 Ah");
        sendOn(again, "/sources/flight-pack", Map.of());
        assertThat(Objects.requireNonNull(build().power().sources().get(0).pack())
                        .cellCapacityMah())
                .isEqualTo(9000);
    }

    private static Pack pack(PowerSource source, double cellMah) {
        Pack old = Objects.requireNonNull(source.pack());
        return new Pack(
                old.chemistry(),
                old.seriesCells(),
                old.parallelCells(),
                cellMah,
                old.continuousC(),
                old.burstC(),
                old.cellMilliohm(),
                old.usablePercent(),
                old.maxChargeC(),
                null,
                null,
                null,
                old.automaticCutOff());
    }

    @Test
    void whatOthersChangedBesidesIsKept() {
        send(BATTERY, battery());
        Page form = browser.open(power + "/sources/flight-pack");
        others(build -> build.withSources(List.of(PowerSource.battery(
                "flight-pack",
                "Flight pack",
                "L1",
                pack(build().power().sources().get(0), 5000)))));
        sendOn(form, "/sources/flight-pack", Map.of("usable", "75"));

        Pack pack = Objects.requireNonNull(build().power().sources().get(0).pack());
        assertThat(pack.cellCapacityMah()).isEqualTo(5000);
        assertThat(pack.usablePercent()).isEqualTo(75);
    }

    @Test
    void aSourceGetsACodeOfItsOwnEvenAmongRails() {
        others(build -> build.withRails(List.of(new Rail("main", "Main", 5.0, null, null, false))));
        send(EXTERNAL, Map.of("name", "Main"));
        send(EXTERNAL, Map.of("name", "New"));
        assertThat(build().power().sources()).extracting(PowerSource::code).containsExactly("main-2", "external-new");
    }

    @Test
    void theKindIsChosenFirst() {
        Page form = browser.open(power + "/sources/new");
        assertThat(form.document().expectFirst("h2").text()).isEqualTo("New source: battery");
        assertThat(form.document().select("a[href$=kind=solar], a[href$=kind=external]"))
                .hasSize(2);
        assertThat(browser.open(power + "/sources/new?kind=peat").status()).isEqualTo(404);
        assertThat(browser.open(power + "/sources/nothing").status()).isEqualTo(404);
    }

    @Test
    void whatIsTypedIsNeverMarkup() {
        Page again = send(BATTERY, Map.of("name", "<script>alert(1)</script>", "series", "\"><b>"));
        assertThat(again.document().select("main script, main b")).isEmpty();
        assertThat(FormWalk.value(again, "series")).isEqualTo("\"><b>");
    }
}
