package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.power.energy.Endurance;
import dev.ledgerwing.core.power.energy.EnduranceFindings;
import dev.ledgerwing.core.power.energy.EnergyShare;
import dev.ledgerwing.core.power.energy.PackEndurance;
import dev.ledgerwing.core.power.energy.PhaseEnergy;
import dev.ledgerwing.core.power.energy.PowerEnergy;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is drawn phase by phase, and how long it lasts.
 *
 * @param finding null where there is no pack and nothing is wanted
 * @param parts of the endurance, in their order
 */
record EnergyView(List<Row> rows, @Nullable Finding finding, List<Part> parts) {

    /**
     * One phase.
     *
     * @param rails what each rail takes, in words
     */
    record Row(String phase, String minutes, String watts, String lost, String energy, String rails) {}

    /** A part of the flight, or of what is kept. */
    record Part(String name, String figure) {}

    static EnergyView of(PowerEnergy energy, BuildReview review) {
        return new EnergyView(
                energy.phases().stream().map(EnergyView::row).toList(),
                review.finding(EnduranceFindings.ENDURANCE).orElse(null),
                parts(energy.endurance(), review.build().power().rules()));
    }

    private static Row row(PhaseEnergy phase) {
        Double minutes = phase.minutes();
        return new Row(
                phase.occasion().name(),
                Electric.minutes(minutes),
                Electric.watts(phase.meanW()),
                Electric.watts(phase.lossW()),
                Electric.wattHours(minutes == null ? null : phase.meanW() * minutes / 60),
                phase.rails().stream()
                        .filter(share -> share.meanW() > 0)
                        .map(EnergyView::share)
                        .collect(Collectors.joining("; ")));
    }

    private static String share(EnergyShare share) {
        return share.name() + " " + Electric.watts(share.meanW());
    }

    private static List<Part> parts(Endurance endurance, PowerRules rules) {
        List<Part> parts = new ArrayList<>();
        if (endurance.plan().hasPhases()) {
            parts.add(new Part("fixed phases", Electric.minutes(endurance.plan().fixedMinutes())));
        }
        if (endurance.plan().stretches()) {
            parts.add(new Part("the phase that stretches", Electric.minutes(endurance.stretchMinutes())));
        }
        parts.add(new Part("kept for the landing, not counted in it", Electric.minutes(rules.landingReserveInForce())));
        Double wanted = rules.wantedMinutes();
        if (wanted != null) {
            parts.add(new Part("wanted", Electric.minutes(wanted)));
        }
        endurance.packs().forEach(pack -> parts.add(new Part(pack.battery().name() + " alone lasts", lasts(pack))));
        return parts;
    }

    private static String lasts(PackEndurance pack) {
        Double minutes = pack.minutes();
        return minutes != null && minutes.isInfinite() ? "longer than the flight" : Electric.minutes(minutes);
    }
}
