package dev.ledgerwing.report.site;

import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.mass.MarginOf;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.report.sheet.BalanceSummary;
import dev.ledgerwing.report.sheet.Fingerprint;
import dev.ledgerwing.report.sheet.MassBar;
import dev.ledgerwing.report.sheet.MassSummary;
import dev.ledgerwing.report.sheet.OutputSummary;
import dev.ledgerwing.report.sheet.PowerSummary;
import dev.ledgerwing.report.sheet.RadioSummary;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * The table of the fleet, ready to be shown: worst first, and among equals the one with the least margin.
 *
 * @param counted how many airframes there are, in words
 */
public record FleetPage(String counted, List<FleetRow> rows) {

    private static final double ROOM_AT_THE_END = 1.04;
    private static final Comparator<SiteAirframe> WORST_FIRST = Comparator.comparing(
                    (SiteAirframe airframe) -> airframe.review().verdict())
            .reversed()
            .thenComparingDouble(FleetPage::marginPercent)
            .thenComparing(SiteAirframe::code);

    public FleetPage {
        rows = List.copyOf(rows);
    }

    static FleetPage of(List<SiteAirframe> airframes, boolean withPdf) {
        double longest = airframes.stream()
                .mapToDouble(airframe -> shareOfTarget(airframe.review().massForecast()))
                .max()
                .orElse(1);
        List<FleetRow> rows = airframes.stream()
                .sorted(WORST_FIRST)
                .map(airframe -> row(airframe, Math.max(1, longest) * ROOM_AT_THE_END, withPdf))
                .toList();
        return new FleetPage(rows.size() == 1 ? "1 airframe" : rows.size() + " airframes, worst first", rows);
    }

    /** Without a target nothing is known of the margin: last among its equals. */
    private static double marginPercent(SiteAirframe airframe) {
        return airframe.review()
                .mass()
                .margin()
                .map(margin -> Objects.requireNonNullElse(margin.percent(MarginOf.TARGET), 0.0))
                .orElse(Double.MAX_VALUE);
    }

    /** How long the bar is when the target is 1; bars without a target fill their room. */
    private static double shareOfTarget(MassForecast forecast) {
        Mass target = forecast.statement().build().budget().targetMass();
        return target == null ? 1 : MassBar.longest(forecast) / target.grams();
    }

    private static FleetRow row(SiteAirframe airframe, double longest, boolean withPdf) {
        MassForecast forecast = airframe.review().massForecast();
        Mass target = forecast.statement().build().budget().targetMass();
        double fullG = longest * (target == null ? MassBar.longest(forecast) : target.grams());
        MassSummary summary = new MassSummary(airframe.review());
        BalanceSummary balance = new BalanceSummary(airframe.review());
        PowerSummary power = new PowerSummary(airframe.review());
        RadioSummary radio = new RadioSummary(airframe.review());
        OutputSummary outputs = new OutputSummary(airframe.review());
        return new FleetRow(
                airframe.name(),
                airframe.review().build().airframe().stage().title(),
                Sheet.BUILD.fileName(airframe.code(), "html"),
                Arrays.stream(Sheet.values())
                        .map(sheet -> sheet.links(airframe.code(), withPdf))
                        .toList(),
                summary.verdict(),
                MassBar.of(forecast, fullG),
                described(summary),
                summary.predicted(),
                summary.target(),
                summary.margin(),
                balance.verdict(),
                balance.cg(MassState.BASIC),
                balance.band(),
                power.verdict(),
                power.margin(),
                power.endurance(),
                radio.verdict(),
                radio.channels(),
                radio.shared(),
                outputs.verdict(),
                outputs.outputs(),
                Fingerprint.shown(airframe.head().fingerprint()));
    }

    private static String described(MassSummary summary) {
        return "Predicted " + summary.predicted().value() + ", target "
                + summary.target().value();
    }
}
