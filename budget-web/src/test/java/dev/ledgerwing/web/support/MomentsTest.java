package dev.ledgerwing.web.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class MomentsTest {

    private final Moments moments =
            new Moments(Clock.fixed(Instant.parse("2026-11-25T23:30:00Z"), ZoneId.of("Europe/Berlin")));

    @Test
    void writesTheTimeOfToday() {
        assertThat(moments.text(Instant.parse("2026-11-26T13:10:59Z"))).isEqualTo("today 14:10");
    }

    @Test
    void countsDaysInTheServersTimeZone() {
        assertThat(moments.text(Instant.parse("2026-11-25T22:59:00Z"))).isEqualTo("25 Nov");
        assertThat(moments.text(Instant.parse("2026-11-25T23:00:00Z"))).isEqualTo("today 00:00");
    }

    @Test
    void addsTheYearOnlyWhereItIsAnother() {
        assertThat(moments.text(Instant.parse("2026-01-01T12:00:00Z"))).isEqualTo("1 Jan");
        assertThat(moments.text(Instant.parse("2025-11-21T12:00:00Z"))).isEqualTo("21 Nov 2025");
        assertThat(moments.full(Instant.parse("2025-11-21T12:00:00Z"))).isEqualTo("21 Nov 2025 13:00");
    }
}
