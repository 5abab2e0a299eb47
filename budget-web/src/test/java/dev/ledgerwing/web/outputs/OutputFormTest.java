package dev.ledgerwing.web.outputs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Output;
import dev.ledgerwing.core.build.Output.Driven;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one output drives, and how. */
class OutputFormTest extends OutputsFormWalk {

    private static final String NEW = "/assignments/new";

    private static Map<String, String> ailerons() {
        return new HashMap<>(Map.ofEntries(
                Map.entry("name", "Ailerons"),
                Map.entry("number", "3"),
                Map.entry("drive.0.part", "L2"),
                Map.entry("drive.0.pieces", "2"),
                Map.entry("pulse", "SERVO_PULSE"),
                Map.entry("fastest", "333 Hz"),
                Map.entry("wanted", "100"),
                Map.entry("low", "1 ms"),
                Map.entry("high", "2000"),
                Map.entry("rest", "1520,5 µs"),
                Map.entry("reversed", "on")));
    }

    @Test
    void anOutputIsAddedEditedAndRemoved() {
        Page after = send(NEW, ailerons());
        assertThat(after.path()).isEqualTo(outputs);
        Output added = new Output(
                "ailerons",
                "Ailerons",
                3,
                List.of(new Driven("L2", 2)),
                PulseKind.SERVO_PULSE,
                333.0,
                100.0,
                1000.0,
                2000.0,
                1520.5,
                true);
        assertThat(build().outputs().assignments()).containsExactly(added);

        Page form = browser.open(outputs + "/assignments/ailerons");
        assertThat(FormWalk.value(form, "drive.0.pieces")).isEqualTo("2");
        assertThat(FormWalk.value(form, "rest")).isEqualTo("1520.5");
        Page wider = press(form, "/assignments/ailerons", "add:drive");
        sendOn(wider, "/assignments/ailerons", Map.of("drive.1.part", "L3", "number", ""));
        assertThat(build().outputs().assignments())
                .containsExactly(added.withDrives(List.of(new Driven("L2", 2), new Driven("L3", 1)))
                        .withNumber(null));

        remove("/assignments/ailerons");
        assertThat(build().outputs().assignments()).isEmpty();
        assertThat(title()).isEqualTo("Output Ailerons removed");
    }

    @Test
    void anOutputForAPartHasItChosenAndItsName() {
        String form = NEW + "?part=L3";
        sendOn(browser.open(outputs + form), form, Map.of());
        assertThat(build().outputs().assignments())
                .containsExactly(new Output(
                        "elevator-servo",
                        "Elevator servo",
                        null,
                        List.of(new Driven("L3", 1)),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        false));
    }

    @Test
    void anOutputWithoutANameIsCalledAsThePartOnIt() {
        send(NEW, Map.of("name", "", "drive.0.part", "L2"));
        assertThat(build().outputs().assignments()).extracting(Output::name).containsExactly("Aileron servo");
    }

    @Test
    void theSameNumberTwiceIsAFindingAndNotRefused() {
        send(NEW, ailerons());
        Map<String, String> second = ailerons();
        second.put("name", "Elevator");
        second.put("drive.0.part", "L3");
        second.put("drive.0.pieces", "1");
        send(NEW, second);
        assertThat(build().outputs().assignments()).extracting(Output::number).containsExactly(3, 3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            number         | 0     | This is a whole number from 1 to 999.
            number         | 1000  | This is a whole number from 1 to 999.
            number         | 2.5   | This is a whole number from 1 to 999.
            number         | three | is not a number
            drive.0.part   | L99   | not there any more
            drive.0.part   |       | Please choose the part.
            drive.0.pieces | 0     | This is a whole number from 1 to 1000.
            drive.0.pieces | 3     | The ledger has only 2 of it.
            drive.0.pieces | two   | is not a number
            pulse          | WATER | Please choose one from the list.
            fastest        | 0.5   | This is from 1 to
            fastest        | 5 ms  | is not a rate
            wanted         | 334   | The device does not bear this
            wanted         | slow  | is not a rate
            low            | 99    | This is from 100 to
            low            | 2000  | The low end is the smaller of the two
            high           | 20001 | This is from 100 to
            high           | 50 Hz | is not a time
            rest           | 999   | This lies outside the travel.
            rest           | 2001  | This lies outside the travel.
            """)
    void anOutputThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new OutputForm(null, null), airframe("godwit"), ailerons());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void aPartInTwoRowsIsRefused() {
        Map<String, String> twice = ailerons();
        twice.put("drive.0.pieces", "1");
        twice.put("drive.1.part", "L3");
        new Troubles(new OutputForm(null, null), airframe("godwit"), twice)
                .say("drive.1.part", "L2", "stands in two rows");
    }

    @Test
    void aNameIsNeededWhereNothingHangsOnIt() {
        Page again = send(NEW, Map.of("number", "2"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "name"))
                .isEqualTo("Please name the output, or choose the part that it drives.");
        assertThat(FormWalk.value(again, "number")).isEqualTo("2");
        new Troubles(new OutputForm(null, null), airframe("godwit"), ailerons())
                .say("name", "x".repeat(201), "This has at most 200 characters.");
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        refusedEverywhere(
                NEW, Map.of("name", "", "number", "0", "drive.0.pieces", "0", "fastest", "x", "low", "1", "high", "x"));
    }
}
