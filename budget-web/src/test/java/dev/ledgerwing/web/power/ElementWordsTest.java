package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElementWordsTest {

    @ParameterizedTest
    @CsvSource({"20, 20 AWG", "0, 1/0 AWG", "-3, 4/0 AWG"})
    void aGaugeIsWrittenAsItIsSpoken(int awg, String words) {
        WireRun run = new WireRun(awg, Length.ofMm(254), 2, WireRun.Routing.BUNDLE, null);

        assertThat(new ElementWords(new Figures(UnitSystem.OUNCE_INCH)).element(FeedElement.wire("Leads", run)))
                .isEqualTo("wire, " + words + ", 10\u2009in, in a bundle");
    }

    @Test
    void severalSideBySideSayHowTheyShare() {
        FeedElement two = new FeedElement(
                "Fuses", FeedElement.Kind.FUSE, 5.0, null, 2, FeedElement.Sharing.JOINED, null, null, null, null, null);

        assertThat(new ElementWords(Figures.METRIC).element(two)).isEqualTo("fuse, 2 side by side, tied together");
    }

    @Test
    void whatASourceDoesNotSayIsNotKnown() {
        assertThat(new ElementWords(Figures.METRIC).source(PowerSource.external("bench", "Bench", null, null)))
                .isEqualTo("supply from outside, not known, up to not known");
    }
}
