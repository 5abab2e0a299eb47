package dev.ledgerwing.web.outputs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.PulseKind;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flight controllers that might be fitted, with their banks. */
class BoardFormTest extends OutputsFormWalk {

    private static Map<String, String> moor() {
        return new HashMap<>(Map.ofEntries(
                Map.entry("name", "Moor board"),
                Map.entry("bank.0.name", "A"),
                Map.entry("bank.0.numbers", "1-4, 6"),
                Map.entry("bank.0.rates", "50, 333 Hz, 0.4 kHz"),
                Map.entry("bank.0.pulse.SERVO_PULSE", "on"),
                Map.entry("bank.0.pulse.DATA", "on"),
                Map.entry("bank.1.name", "B"),
                Map.entry("bank.1.numbers", "7 to 8; 5"),
                Map.entry("bank.1.rates", ""),
                Map.entry("serial", "6"),
                Map.entry("i2c", "1"),
                Map.entry("can", "0"),
                Map.entry("analog", ""),
                Map.entry("mass", "38 g"),
                Map.entry("typical", "220 mA"),
                Map.entry("peak", "0,4"),
                Map.entry("plugs", "5")));
    }

    private static final Board MOOR = new Board(
            "moor-board",
            "Moor board",
            List.of(
                    new OutputBank(
                            "A",
                            List.of(1, 2, 3, 4, 6),
                            List.of(50.0, 333.0, 400.0),
                            List.of(PulseKind.SERVO_PULSE, PulseKind.DATA)),
                    new OutputBank("B", List.of(7, 8, 5), List.of(), List.of())),
            6,
            1,
            0,
            null,
            Mass.ofGrams(38),
            0.22,
            0.4,
            5.0);

    @Test
    void aBoardIsAddedEditedAndRemoved() {
        Page after = send("/boards/new", moor());
        assertThat(after.path()).isEqualTo(outputs);
        assertThat(build().outputs().boards()).containsExactly(MOOR);
        assertThat(title()).isEqualTo("Flight controller Moor board added");

        Page form = browser.open(outputs + "/boards/moor-board");
        assertThat(FormWalk.value(form, "bank.0.numbers")).isEqualTo("1-4, 6");
        assertThat(FormWalk.value(form, "bank.0.rates")).isEqualTo("50, 333, 400");
        assertThat(FormWalk.value(form, "bank.1.numbers")).isEqualTo("7, 8, 5");
        assertThat(FormWalk.ticked(form, "bank.0.pulse.DATA")).containsExactly("on");
        assertThat(FormWalk.ticked(form, "bank.0.pulse.ON_OFF")).isEmpty();

        sendOn(form, "/boards/moor-board", Map.of("analog", "2", "row", "remove:bank:1"));
        assertThat(build().outputs().boards()).containsExactly(MOOR);
        sendOn(form, "/boards/moor-board", Map.of("analog", "2"));
        assertThat(build().outputs().boards()).extracting(Board::analogInputs).containsExactly(2);

        remove("/boards/moor-board");
        assertThat(build().outputs().boards()).isEmpty();
    }

    @Test
    void theBoardAboardIsNoLongerChosenOnceItIsRemoved() {
        others(build -> build.withBoards(List.of(MOOR)).withFittedBoard(new FittedBoard("moor-board", "L1")));
        assertThat(browser.open(outputs + "/boards/moor-board").text()).contains("none is chosen any more");
        remove("/boards/moor-board");
        assertThat(build().outputs().fitted()).isEqualTo(new FittedBoard(null, "L1"));
    }

    @Test
    void aRowThatStaysEmptyIsNoBank() {
        Page form = press(browser.open(outputs + "/boards/new"), "/boards/new", "add:bank");
        sendOn(form, "/boards/new", Map.of("name", "Bare board"));
        assertThat(build().outputs().boards())
                .containsExactly(new Board(
                        "bare-board", "Bare board", List.of(), null, null, null, null, null, null, null, null));
    }

    @Test
    void banksComeAndGoAndKeepWhatWasTyped() {
        Map<String, String> more = moor();
        more.put("row", "add:bank");
        Page added = send("/boards/new", more);
        assertThat(FormWalk.value(added, "bank.0.rates")).isEqualTo("50, 333 Hz, 0.4 kHz");
        assertThat(FormWalk.ticked(added, "bank.0.pulse.SERVO_PULSE")).containsExactly("on");
        assertThat(FormWalk.value(added, "bank.2.name")).isEmpty();
        Page fewer = press(added, "/boards/new", "remove:bank:0");
        assertThat(FormWalk.value(fewer, "bank.0.numbers")).isEqualTo("7 to 8; 5");
        assertThat(FormWalk.ticked(fewer, "bank.0.pulse.SERVO_PULSE")).isEmpty();
        assertThat(FormWalk.value(fewer, "mass")).isEqualTo("38 g");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            name             |             | Please name the flight controller.
            bank.0.name      |             | Please name the bank
            bank.0.numbers   |             | Please give the numbers of its outputs
            bank.0.numbers   | 0           | from 1 to 999.
            bank.0.numbers   | 0-4         | from 1 to 999.
            bank.0.numbers   | 1-4, 1000   | from 1 to 999.
            bank.0.numbers   | 4-1         | please write the smaller number first.
            bank.0.numbers   | 1-4, 3      | Output 3 stands here twice.
            bank.0.numbers   | 1-65        | at most 64 outputs
            bank.0.numbers   | 1-999999999 | from 1 to 999.
            bank.0.numbers   | one, two    | as they are printed on the board
            bank.0.numbers   | 1, , 3      | as they are printed on the board
            bank.0.numbers   | −1          | as they are printed on the board
            bank.1.numbers   | 6-8         | Output 6 is in bank 1 already.
            bank.0.rates     | fast        | Please write the rates in hertz
            bank.0.rates     | 50,,333     | Please write the rates in hertz
            bank.0.rates     | 50, 5 V     | Please write the rates in hertz
            bank.0.rates     | 0           | This is from 1 to
            bank.0.rates     | 50, 1e6     | This is from 1 to
            bank.0.rates     | -50         | This is from 1 to
            serial           | 101         | This is a whole number from 0 to 100.
            i2c              | 1.5         | This is a whole number from 0 to 100.
            can              | -1          | This is a whole number from 0 to 100.
            analog           | some        | is not a number
            mass             | -1          | A mass is from 0 g
            mass             | 5 V         | is not a mass
            typical          | 1 kV        | is not a current
            peak             | 0.1         | at least the typical current
            peak             | 2001        | This is from 0 to 2000
            plugs            | 0           | This is from 0.01 to 1000
            """)
    void aBoardThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new BoardForm(null), airframe("godwit"), moor());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void aNameOfMoreThanTwoHundredCharactersIsRefusedAndKept() {
        String long200 = "x".repeat(200);
        Troubles troubles = new Troubles(new BoardForm(null), airframe("godwit"), moor());
        troubles.say("name", long200 + "x", "This has at most 200 characters.");
        troubles.say("bank.1.name", long200 + "x", "This has at most 200 characters.");
        Map<String, String> named = moor();
        named.put("name", long200);
        send("/boards/new", named);
        assertThat(build().outputs().boards()).extracting(Board::name).containsExactly(long200);
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        refusedEverywhere(
                "/boards/new",
                Map.of(
                        "name",
                        "",
                        "bank.0.numbers",
                        "1-",
                        "bank.0.rates",
                        "?",
                        "serial",
                        "x",
                        "mass",
                        "?",
                        "peak",
                        "-1"));
    }

    @Test
    void aBoardThatOthersRemovedIsToldAsAClash() {
        send("/boards/new", moor());
        Page form = browser.open(outputs + "/boards/moor-board");
        others(build -> build.withBoards(List.of()));
        Page again = sendOn(form, "/boards/moor-board", Map.of("name", "Fen board"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "name")).isEqualTo("Fen board");
        assertThat(FormWalk.value(again, "bank.0.numbers")).isEqualTo("1-4, 6");
        sendOn(again, "/boards/moor-board", Map.of());
        assertThat(build().outputs().boards()).extracting(Board::unitMass).containsExactly(Mass.ofGrams(38));
    }

    @Test
    void whatIsNotThereIsNotFound() {
        assertThat(browser.open(outputs + "/boards/nothing").status()).isEqualTo(404);
        assertThat(browser.open(outputs + "/nothing").status()).isEqualTo(404);
    }
}
