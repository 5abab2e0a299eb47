package dev.ledgerwing.web.history;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.support.Moments;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Gathers what the page of one revision shows. */
@Component
class RevisionPages {

    private final Readings readings;
    private final Moments moments;

    RevisionPages(Readings readings, Moments moments) {
        this.readings = readings;
        this.moments = moments;
    }

    RevisionView of(Snapshot head, Seen wanted, int start, Figures figures) {
        Snapshot after = readings.at(wanted);
        boolean isFirst = wanted.number() == 1;
        Snapshot before = isFirst ? after : readings.at(new Seen(wanted.airframe(), wanted.number() - 1));
        HistoryView.Writer writer = new HistoryView.Writer(figures, moments);
        return new RevisionView(
                writer.row(after.revision(), isFirst ? null : before.revision()),
                new DifferenceView.Between(before, after, figures).told(readings.change(wanted), start),
                after.shortFingerprint(),
                head.revision().number());
    }

    /** Ids of the lines there are, so that edits of them can lead there. */
    static Set<String> lines(Build build) {
        return build.lines().stream().map(PartLine::id).collect(Collectors.toUnmodifiableSet());
    }
}
