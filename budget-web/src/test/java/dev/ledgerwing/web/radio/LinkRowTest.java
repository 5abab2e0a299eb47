package dev.ledgerwing.web.radio;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.radio.FrameTiming;
import org.junit.jupiter.api.Test;

class LinkRowTest {

    @Test
    void whatIsNotRecordedIsNotKnown() {
        assertThat(LinkRow.of(null, null)).isEmpty();
        assertThat(LinkRow.of(RadioLink.of(6), null))
                .extracting(LinkRow::words)
                .containsExactly("6", "not known", "not known");
    }

    /** A frame of 22.5 ms with eight channels of 2 ms leaves 6.5 ms and comes about 44 times a second: checks, power-radio 6.1. */
    @Test
    void theGapOfAFrameIsWorkedOutInSight() {
        PulseTrain train = new PulseTrain(22_500.0, 2000, 2500);

        assertThat(LinkRow.of(RadioLink.of(8), FrameTiming.of(train, 8)))
                .last()
                .isEqualTo(
                        new LinkRow(
                                "The gap between two frames",
                                "22500\u2009µs − 8 × 2000\u2009µs = 6500\u2009µs at the shortest, 44.4 frames a second: holds"));
    }

    /** Twelve channels of 2 ms take longer than a frame of 22.5 ms: checks, power-radio 6.1. */
    @Test
    void aFrameThatIsTooShortIsSaidNotToFit() {
        PulseTrain train = new PulseTrain(22_500.0, 2000, 2500);

        assertThat(LinkRow.of(RadioLink.of(12), FrameTiming.of(train, 12)))
                .last()
                .extracting(LinkRow::words)
                .asString()
                .contains("−1500\u2009µs")
                .endsWith("does not fit");
    }
}
