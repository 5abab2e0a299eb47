package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known of the link. */
class LinkFormTest extends RadioFormWalk {

    private static final String LINK = "/link";

    private static Map<String, String> whole() {
        return Map.of(
                "channels", "8",
                "loss", "NO_PULSES",
                "acts", "BOARD",
                "learns", "SILENCE",
                "frame", "22.5 ms",
                "longest", "2000",
                "gap", "2700 us");
    }

    private RadioLink link() {
        return Objects.requireNonNull(build().radio().link());
    }

    @Test
    void theLinkIsSaidShownAndForgottenAgain() {
        Page after = send(LINK, whole());
        assertThat(after.path()).isEqualTo(radio);
        assertThat(build().radio().link())
                .isEqualTo(new RadioLink(
                        8,
                        OnLoss.NO_PULSES,
                        ActsOnLoss.BOARD,
                        BoardLearnsBy.SILENCE,
                        new PulseTrain(22_500.0, 2000, 2700)));
        Page form = browser.open(radio + LINK);
        assertThat(FormWalk.value(form, "frame")).isEqualTo("22500");
        int before = number();
        sendOn(form, LINK, Map.of());
        assertThat(number()).isEqualTo(before);
        sendOn(
                form,
                LINK,
                Map.of("channels", "", "loss", "", "acts", "", "learns", "", "frame", "", "longest", "", "gap", ""));
        assertThat(build().radio().link()).isNull();
    }

    @Test
    void whatIsNotKnownStaysEmpty() {
        send(LINK, Map.of("channels", "6"));
        assertThat(build().radio().link()).isEqualTo(RadioLink.of(6));
    }

    @Test
    void thePageLeadsToTheFirstPhase() {
        assertThat(browser.open(radio + LINK).document().select(".notice a[href$=/power/phases]"))
                .hasSize(1);
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + LINK);
        assertThat(form.text()).contains("The first phase, “Power on”");
        assertThat(form.document().select("a[href=" + radio + "/demands?phase=power-on]"))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            channels; ; Please give how many channels
            channels; 0; This is a whole number from 1 to 32.
            channels; 33; This is a whole number from 1 to 32.
            channels; 6.5; This is a whole number from 1 to 32.
            channels; 4; Channel 5 is in use
            channels; many; is not a number
            loss; PANIC; Please choose one from the list.
            acts; NOBODY; Please choose one from the list.
            learns; GUESSING; Please choose one from the list.
            frame; 999; This is from 1000 to 100000
            frame; 3 kg; is not a time
            longest; ; Please give the longest pulse, too.
            longest; 99; This is from 100 to 10000
            gap; ; Please give the shortest gap, too.
            gap; 50001; This is from 100 to 50000
            """)
    void aLinkThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new LinkForm(), equipped(airframe("godwit")), whole());
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        refusedEverywhere(
                LINK,
                Map.of(
                        "channels",
                        "x",
                        "loss",
                        "x",
                        "acts",
                        "x",
                        "learns",
                        "x",
                        "frame",
                        "x",
                        "longest",
                        "x",
                        "gap",
                        "x"));
    }

    @Test
    void twoWhoChangeDifferentThingsOfTheLinkGoTogetherAndOneThingClashes() {
        others(RadioFormWalk::equipped);
        Page form = browser.open(radio + LINK);
        send(LINK, Map.of("channels", "7"));
        Page again = sendOn(form, LINK, Map.of("channels", "9"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "channels")).isEqualTo("9");
        sendOn(again, LINK, Map.of());
        assertThat(link().channels()).isEqualTo(9);
        sendOn(form, LINK, Map.of("learns", "FLAG", "channels", "6"));
        assertThat(link().channels()).isEqualTo(9);
        assertThat(link().boardLearnsBy()).isEqualTo(BoardLearnsBy.FLAG);
    }
}
