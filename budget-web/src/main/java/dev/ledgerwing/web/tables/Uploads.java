package dev.ledgerwing.web.tables;

import dev.ledgerwing.web.team.Member;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.springframework.stereotype.Component;

/**
 * The tables that members are looking at, in memory: a few for each member, each for as long as it is looked at. What was not
 * looked at for the longest time goes first. Nobody but the member who gave a table gets to see it.
 */
@Component
class Uploads {

    static final int MOST_EACH = 3;
    static final Duration KEPT = Duration.ofHours(1);
    static final long MOST_BYTES = 64L * 1024 * 1024;

    private final Clock clock;

    /** Longest untouched first. */
    private final Map<String, Kept> kept = new LinkedHashMap<>();

    Uploads(Clock clock) {
        this.clock = clock;
    }

    private record Kept(long member, Upload upload, Instant touched) {}

    synchronized void keep(Upload upload, Member member) {
        touch(upload, member);
        while (count(member) > MOST_EACH) {
            forgetFirst(entry -> entry.member == member.id());
        }
        while (bytes() > MOST_BYTES) {
            forgetFirst(entry -> true);
        }
    }

    /** The table that {@code member} gave for an airframe; nothing once it is forgotten. */
    synchronized Optional<Upload> find(String id, String airframe, Member member) {
        Instant oldest = clock.instant().minus(KEPT);
        kept.values().removeIf(entry -> entry.touched.isBefore(oldest));
        Optional<Upload> found = Optional.ofNullable(kept.get(id))
                .filter(entry -> entry.member == member.id())
                .map(Kept::upload)
                .filter(upload -> upload.airframe().equals(airframe));
        found.ifPresent(upload -> touch(upload, member));
        return found;
    }

    private void touch(Upload upload, Member member) {
        kept.remove(upload.id());
        kept.put(upload.id(), new Kept(member.id(), upload, clock.instant()));
    }

    private long count(Member member) {
        return kept.values().stream()
                .filter(entry -> entry.member == member.id())
                .count();
    }

    private long bytes() {
        return kept.values().stream()
                .mapToLong(entry -> entry.upload.bytes().length)
                .sum();
    }

    private void forgetFirst(Predicate<Kept> which) {
        for (Iterator<Kept> entries = kept.values().iterator(); entries.hasNext(); ) {
            if (which.test(entries.next())) {
                entries.remove();
                return;
            }
        }
    }
}
