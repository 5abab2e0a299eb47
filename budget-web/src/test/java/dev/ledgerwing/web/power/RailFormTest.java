package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.web.balance.FormWalk;
import dev.ledgerwing.web.forms.Troubles;
import dev.ledgerwing.web.support.Browser.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rails. */
class RailFormTest extends PowerFormWalk {

    private static final Map<String, String> MAIN =
            Map.of("name", "Avionics, 5 V", "nominal", "5 V", "min", "4,8", "max", "5.5", "redundant", "on");

    @Test
    void aRailIsAddedEditedAndRemoved() {
        Page after = send("/rails/new", MAIN);
        assertThat(after.path()).isEqualTo(power);
        assertThat(build().power().rails())
                .containsExactly(new Rail("avionics-5-v", "Avionics, 5 V", 5.0, 4.8, 5.5, true));

        send("/rails/avionics-5-v", Map.of("name", "Avionics", "min", ""));
        assertThat(build().power().rails()).containsExactly(new Rail("avionics-5-v", "Avionics", 5.0, null, 5.5, true));
        remove("/rails/avionics-5-v");
        assertThat(build().power().rails()).isEmpty();
        assertThat(title()).isEqualTo("Rail Avionics removed");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            name; ; Please name the rail.
            nominal; 0; This is from 0.1 to 1000
            nominal; five; is not a voltage
            nominal; 6; outside what the rail may have
            min; -1; This is from 0 to 1000
            min; 5 A; is not a voltage
            min; 5.6; the smaller of the two
            max; 1001; This is from 0 to 1000
            """)
    void aRailThatCannotBeIsRefusedAtItsField(String field, String typed, String sentence) {
        Troubles troubles = new Troubles(new RailForm(null), airframe("godwit"), MAIN);
        troubles.sayNothingOfWhatIsGood();
        troubles.say(field, typed, sentence);
    }

    @Test
    void whereEverythingIsWrongEverythingIsSaid() {
        refusedEverywhere("/rails/new", Map.of("name", "", "nominal", "x", "min", "-1", "max", "5 A"));
    }

    @Test
    void aRailStaysWhileSomethingHangsOnIt() {
        send("/rails/new", MAIN);
        others(build -> build.withSources(List.of(PowerSource.external("bench", "Bench", 5.0, 2.0)))
                .withFeeds(List.of(new Feed("leg", "Leg", "bench", "avionics-5-v", List.of()))));
        send("/loads/L2", Map.of("load.0.rail", "avionics-5-v"));

        Page form = browser.open(power + "/rails/avionics-5-v");
        assertThat(form.text()).contains("Now there are Receiver, the feed Leg.");
        assertThat(form.document().select("[formaction$=remove]")).isEmpty();
        int before = number();
        browser.post(power + "/rails/avionics-5-v/remove", form, FormWalk.fields(form, Map.of()));
        assertThat(build().power().rails()).hasSize(1);
        assertThat(number()).isEqualTo(before);
    }

    @Test
    void aRailThatOthersRemovedIsToldAsAClash() {
        send("/rails/new", MAIN);
        Page form = browser.open(power + "/rails/avionics-5-v");
        others(build -> build.withRails(List.of()));
        Page again = sendOn(form, "/rails/avionics-5-v", Map.of("name", "Radio rail"));
        assertThat(again.status()).isEqualTo(422);
        assertThat(FormWalk.value(again, "name")).isEqualTo("Radio rail");
    }
}
