package dev.ledgerwing.web.outputs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PortNeeds;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What parts need of the flight controller, all at once or one alone. */
class NeedsFormTest extends OutputsFormWalk {

    private PortNeeds needs(String line) {
        return build().line(line).map(PartLine::needs).orElseThrow();
    }

    @Test
    void partsThatMayNeedSomethingAreListedAndTheOthersCanBeAdded() {
        Page form = browser.open(outputs + "/needs");
        assertThat(form.document().select("input[name$=.part]").eachAttr("value"))
                .containsExactly("L1", "L2", "L3", "L4");
        Page more = sendOn(
                form,
                "/needs",
                Map.of("need.1.outputs", "2", "need.3.i2c", "0x28, 0xd", "need.3.serial", "1", "row", "add:need"));
        assertThat(FormWalk.value(more, "need.1.outputs")).isEqualTo("2");
        Page after = sendOn(more, "/needs", Map.of("need.4.part", "L5", "need.4.analog", "1"));

        assertThat(after.path()).isEqualTo(outputs);
        assertThat(title()).isEqualTo("What 3 parts need of the flight controller");
        assertThat(needs("L2")).isEqualTo(new PortNeeds(2, 0, List.of(), 0, 0));
        assertThat(needs("L4")).isEqualTo(new PortNeeds(0, 1, List.of("0x28", "0x0D"), 0, 0));
        assertThat(needs("L5")).isEqualTo(new PortNeeds(0, 0, List.of(), 0, 1));
        assertThat(needs("L1")).isEqualTo(PortNeeds.NONE);
    }

    @Test
    void onePartIsEditedAloneAndEmptyFieldsMeanNothing() {
        Page after = send("/needs/L3", Map.of("need.0.outputs", "1", "need.0.can", "2"));
        assertThat(after.path()).isEqualTo(outputs);
        assertThat(title()).isEqualTo("What Elevator servo needs of the flight controller");
        assertThat(needs("L3")).isEqualTo(new PortNeeds(1, 0, List.of(), 2, 0));
        assertThat(FormWalk.value(browser.open(outputs + "/needs/L3"), "need.0.outputs"))
                .isEqualTo("1");
        send("/needs/L3", Map.of("need.0.outputs", "", "need.0.can", "0"));
        assertThat(needs("L3")).isEqualTo(PortNeeds.NONE);
    }

    @Test
    void anAddressThatTheRecordHasInWordsOfItsOwnStaysWhileNobodyTouchesIt() {
        others(build -> build.withLines(build.lines().stream()
                .map(line -> line.id().equals("L4") ? line.withNeeds(new PortNeeds(0, 0, List.of("28h"), 0, 0)) : line)
                .toList()));
        send("/needs/L4", Map.of("need.0.serial", "1"));
        assertThat(needs("L4")).isEqualTo(new PortNeeds(0, 1, List.of("28h"), 0, 0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            need.0.part    | L99        | not there any more
            need.0.part    |            | Please choose the part.
            need.0.outputs | -1         | This is a whole number from 0 to 100.
            need.0.outputs | 101        | This is a whole number from 0 to 100.
            need.0.serial  | 1.5        | This is a whole number from 0 to 100.
            need.0.can     | x          | is not a number
            need.0.analog  | 2 V        | is not a number
            need.0.i2c     | 40         | Please write each address as the data sheet does
            need.0.i2c     | 0x28, 0xZZ | Please write each address as the data sheet does
            need.0.i2c     | 0x400      | from 0x00 to 0x3FF
            """)
    void aNeedThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Map<String, String> good = new HashMap<>(Map.of(
                "need.0.part",
                "L2",
                "need.0.outputs",
                "2",
                "need.0.serial",
                "1",
                "need.0.i2c",
                "0x28, 0x0d,",
                "need.0.can",
                "1",
                "need.0.analog",
                ""));
        Troubles troubles = new Troubles(new NeedsForm(null), airframe("godwit"), good);
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void aPartInTwoRowsIsRefusedAndWhatWasTypedIsKept() {
        Page form = press(browser.open(outputs + "/needs"), "/needs", "add:need");
        Page again = sendOn(form, "/needs", Map.of("need.4.part", "L2", "need.4.outputs", "2"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.error(again, "need.4.part")).contains("stands in two rows");
        assertThat(FormWalk.value(again, "need.4.outputs")).isEqualTo("2");
    }
}
