package dev.ledgerwing.core.power.energy;

import java.util.List;

/**
 * How long a pack lasts through phases of constant current. Fixed phases come first, the stretching one takes what is left:
 *
 * <pre>
 * t_stretch = (Q_usable - sum(I_k t_k)) / I_stretch - t_reserve
 * </pre>
 *
 * Without a stretching phase the reserve is at the mean current of the flight. Charge goes out one to one: no Peukert, which lithium hardly
 * knows.
 *
 * @param usableMah what may be taken out, the landing reserve included
 * @param legs in the order of the phases
 */
record PackTime(double usableMah, List<PackLeg> legs, double reserveMinutes) {

    PackTime {
        legs = List.copyOf(legs);
    }

    /** Whether anything is drawn from it at all. */
    boolean isDrawnFrom() {
        return legs.stream().anyMatch(leg -> leg.meanA() > 0);
    }

    /** Whether the fixed phases and the reserve fit into it. */
    boolean holdsFixedPhases() {
        return leftMah() >= 0;
    }

    /** How long the whole flight may last as far as this pack goes; infinite when it stretches without any current from here. */
    double minutes() {
        if (!holdsFixedPhases()) {
            return minutesUntilSpent();
        }
        return stretches() ? fixedMinutes() + PackLeg.minutes(leftMah(), stretchA()) : fixedMinutes();
    }

    double fixedMinutes() {
        return legs.stream()
                .filter(leg -> !leg.stretches())
                .mapToDouble(PackLeg::minutes)
                .sum();
    }

    private double leftMah() {
        return usableMah - reserveMah() - fixedMah();
    }

    private double fixedMah() {
        return legs.stream()
                .filter(leg -> !leg.stretches())
                .mapToDouble(PackLeg::mah)
                .sum();
    }

    private double reserveMah() {
        if (stretches()) {
            return PackLeg.mah(stretchA(), reserveMinutes);
        }
        double fixedMinutes = fixedMinutes();
        return fixedMinutes == 0 ? 0 : fixedMah() / fixedMinutes * reserveMinutes;
    }

    private boolean stretches() {
        return legs.stream().anyMatch(PackLeg::stretches);
    }

    private double stretchA() {
        return legs.stream()
                .filter(PackLeg::stretches)
                .mapToDouble(PackLeg::meanA)
                .sum();
    }

    /** Phase after phase until nothing but the reserve is left. */
    private double minutesUntilSpent() {
        double leftMah = Math.max(0, usableMah - reserveMah());
        double minutes = 0;
        for (PackLeg leg : legs) {
            if (leg.stretches()) {
                continue;
            }
            if (leg.mah() > leftMah) {
                return minutes + PackLeg.minutes(leftMah, leg.meanA());
            }
            leftMah -= leg.mah();
            minutes += leg.minutes();
        }
        return minutes;
    }
}
