package dev.ledgerwing.web.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.quantity.UnitSystem;
import dev.ledgerwing.web.team.Member;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class UploadsTest {

    private static final Member MARA = new Member(1, "Mara", UnitSystem.GRAM_MILLIMETRE);
    private static final Member JONAS = new Member(2, "Jonas", UnitSystem.GRAM_MILLIMETRE);
    private static final int LARGE = 8 * 1024 * 1024;

    private Instant now = Instant.parse("2026-04-01T10:00:00Z");

    private final InstantSource time = () -> now;
    private final Uploads uploads = new Uploads(clock());

    private Clock clock() {
        return time.withZone(ZoneOffset.UTC);
    }

    private Upload kept(Member member, int bytes) {
        Upload upload = new Upload("dunlin", "parts.csv", new byte[bytes]);
        uploads.keep(upload, member);
        return upload;
    }

    private boolean isThere(Upload upload, Member member) {
        return uploads.find(upload.id(), "dunlin", member).isPresent();
    }

    @Test
    void giveATableToTheMemberWhoGaveItAndToNobodyElse() {
        Upload upload = kept(MARA, 10);

        assertThat(uploads.find(upload.id(), "dunlin", MARA)).containsSame(upload);
        assertThat(isThere(upload, JONAS)).isFalse();
        assertThat(uploads.find(upload.id(), "godwit", MARA)).isEmpty();
    }

    @Test
    void forgetWhatNobodyLookedAtForAnHour() {
        Upload looked = kept(MARA, 10);
        Upload left = kept(MARA, 10);
        now = now.plus(Duration.ofMinutes(40));
        assertThat(isThere(looked, MARA)).isTrue();
        now = now.plus(Duration.ofMinutes(40));

        assertThat(isThere(looked, MARA)).isTrue();
        assertThat(isThere(left, MARA)).isFalse();
    }

    @Test
    void keepThreeForEachMember() {
        Upload other = kept(JONAS, 10);
        Upload first = kept(MARA, 10);
        Upload second = kept(MARA, 10);
        Upload third = kept(MARA, 10);
        assertThat(isThere(first, MARA)).isTrue();

        Upload fourth = kept(MARA, 10);

        assertThat(List.of(first, third, fourth)).allMatch(upload -> isThere(upload, MARA));
        assertThat(isThere(second, MARA)).as("untouched for longest").isFalse();
        assertThat(isThere(other, JONAS)).isTrue();
    }

    @Test
    void neverHoldMoreThanTheyMay() {
        List<Upload> all = new ArrayList<>();
        for (int id = 10; id < 19; id++) {
            all.add(kept(new Member(id, "Member " + id, UnitSystem.GRAM_MILLIMETRE), LARGE));
        }

        assertThat(isThere(all.get(0), new Member(10, "Member 10", UnitSystem.GRAM_MILLIMETRE)))
                .isFalse();
        assertThat(isThere(all.get(8), new Member(18, "Member 18", UnitSystem.GRAM_MILLIMETRE)))
                .isTrue();
        assertThat(Uploads.MOST_BYTES).isEqualTo(8L * LARGE);
    }
}
