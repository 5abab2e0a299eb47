package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerPictures;
import dev.ledgerwing.web.airframe.FindingRow;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The power page of one airframe, ready to be shown.
 *
 * @param isEmpty whether no source, no rail and no feed is recorded
 * @param moreFindings how many findings are left out, none of them worse than those shown
 * @param diagram the way of the current from sources to rails, {@code energyChart} and {@code dayChart} of what is drawn and
 *     harvested; ready markup of our own, the last one empty where there is no day
 */
record PowerView(
        boolean isEmpty,
        List<FindingRow> findings,
        int moreFindings,
        String diagram,
        FailureView failures,
        List<RailRow> rails,
        List<FeedGroup> feeds,
        List<SourceRow> sources,
        EnergyView energy,
        String energyChart,
        List<BatteryRow> batteries,
        List<String> cautions,
        @Nullable DayView day,
        String dayChart,
        boolean hasCells,
        WiringView wiring,
        List<LoadGroup> loads,
        List<LoadGroup.Silent> silent) {

    /** What is to be done something about, or not known yet. */
    public List<FindingRow> pressing() {
        return findings.stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS)
                .toList();
    }

    /** Whether anything hangs on a rail: without that no failure takes anything, which says nothing. */
    public boolean hasLoads() {
        return loads.stream()
                .anyMatch(group -> group.rail() != null && !group.rows().isEmpty());
    }

    /** What is fine. */
    public List<FindingRow> holding() {
        return findings.stream()
                .filter(finding -> finding.verdict() == Verdict.HOLDS)
                .toList();
    }

    /** Feeds with something in them that does not hold, is not known or not judged. */
    public List<FeedGroup> pressingFeeds() {
        return feeds.stream().filter(feed -> !feed.holds()).toList();
    }

    public List<FeedGroup> holdingFeeds() {
        return feeds.stream().filter(FeedGroup::holds).toList();
    }

    static PowerView of(BuildReview review, @Nullable String failed) {
        Build build = review.build();
        PowerStatement power = review.power();
        NetworkStatement network = power.network();
        DayBalance day = power.day();
        List<FindingRow> findings = FindingRow.of(review, Budget.POWER);
        return new PowerView(
                power.isBlank(),
                findings,
                review.findings(Budget.POWER).size() - findings.size(),
                FailureView.chosen(power.failures(), failed)
                        .map(row -> PowerPictures.feeds(power, row))
                        .orElseGet(() -> PowerPictures.feeds(power))
                        .html(),
                FailureView.of(power.failures(), failed),
                RailRow.of(network),
                FeedGroup.of(network, review.units()),
                SourceRow.of(network, review.units()),
                EnergyView.of(power.energy(), review),
                PowerPictures.energy(power).html(),
                BatteryRow.of(build, power.charging()),
                BatteryRow.cautions(build),
                day == null ? null : DayView.of(day, review),
                day == null ? "" : PowerPictures.day(power, day).html(),
                build.power().sources().stream().anyMatch(source -> source.kind() == PowerSource.Kind.SOLAR),
                WiringView.of(power.wiring(), review),
                LoadGroup.of(build),
                LoadGroup.silent(build));
    }
}
