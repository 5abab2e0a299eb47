package dev.ledgerwing.core.power.energy;

import static dev.ledgerwing.core.power.network.PowerWords.quoted;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.PowerRules;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Whether the packs last as long as the flight is wanted to. */
public final class EnduranceFindings {

    public static final String ENDURANCE = "power.endurance";

    /** Short of this much more than what is wanted it is tight. Ledgerwing's own choice; from no publication. */
    public static final double TIGHT_PERCENT = 10;

    private static final double HOURS_FROM_MINUTES = 180;

    private final Endurance endurance;
    private final PowerRules rules;

    private EnduranceFindings(Endurance endurance, PowerRules rules) {
        this.endurance = endurance;
        this.rules = rules;
    }

    /** One finding; none where there is no pack and nothing is wanted. */
    public static List<Finding> of(Build build, Endurance endurance) {
        PowerRules rules = build.power().rules();
        boolean hasPacks =
                build.power().sources().stream().anyMatch(source -> source.kind() == PowerSource.Kind.BATTERY);
        return hasPacks || rules.wantedMinutes() != null
                ? List.of(new EnduranceFindings(endurance, rules).finding())
                : List.of();
    }

    private Finding finding() {
        if (endurance.collapsed()) {
            return notKnown("a source cannot give what is asked of it on the way.");
        }
        if (!endurance.isKnown()) {
            return notKnown("enter " + String.join("; ", endurance.missing()) + ".");
        }
        if (endurance.packs().isEmpty()) {
            return notKnown("nothing draws on a pack yet.");
        }
        Double minutes = endurance.minutes();
        if (minutes == null) {
            return notKnown("nothing draws on a pack in the phase that stretches.");
        }
        return endurance.holdsFixedPhases() ? judged(minutes) : tooLittle(minutes);
    }

    private Finding notKnown(String why) {
        return finding(Verdict.UNKNOWN, "How long it flies is not known: " + why);
    }

    private Finding tooLittle(double minutes) {
        double fixedMinutes = endurance.plan().fixedMinutes();
        return finding(
                Verdict.BREAKS,
                fixedMinutes == 0
                        ? limiting() + " holds less than " + reserve() + "."
                        : limiting() + " does not hold the fixed phases, " + time(fixedMinutes) + " in all, and "
                                + reserve() + ": that much is left in it after " + time(minutes) + " already.");
    }

    private Finding judged(double minutes) {
        Double wanted = rules.wantedMinutes();
        if (wanted == null) {
            return finding(Verdict.HOLDS, lasts(minutes) + ". How long it shall last is not said.");
        }
        String against = lasts(minutes) + "; " + time(wanted) + " are wanted";
        if (minutes < wanted) {
            return finding(Verdict.BREAKS, against + ", " + time(wanted - minutes) + " more.");
        }
        return minutes < wanted * (1 + TIGHT_PERCENT / 100)
                ? finding(Verdict.TIGHT, against + ": less than " + Figures.percent(TIGHT_PERCENT) + " more than that.")
                : finding(Verdict.HOLDS, against + ".");
    }

    private String lasts(double minutes) {
        if (!endurance.plan().hasPhases()) {
            return "With everything on all the time it lasts " + time(minutes) + " until " + limiting() + " holds only "
                    + reserve();
        }
        return endurance.plan().stretching() == null
                ? "The phases last " + time(minutes) + " in all, and " + limiting() + " holds them and " + reserve()
                : "It flies " + time(minutes) + " until " + limiting() + " holds only " + reserve();
    }

    private String reserve() {
        Phase stretching = endurance.plan().stretching();
        String minutes = time(rules.landingReserveInForce());
        return stretching == null
                ? minutes + " for the landing"
                : minutes + " of " + quoted(stretching.name()) + " for the landing";
    }

    private String limiting() {
        return quoted(Objects.requireNonNull(endurance.limiting()).battery().name());
    }

    private static String time(double minutes) {
        return minutes < HOURS_FROM_MINUTES
                ? Figures.number(minutes, 1) + "\u2009min"
                : Figures.number(minutes / 60, 1) + "\u2009h";
    }

    private Finding finding(Verdict verdict, String sentence) {
        @Nullable Double minutes = endurance.minutes();
        Double wanted = rules.wantedMinutes();
        return new Finding(
                ENDURANCE,
                Budget.POWER,
                verdict,
                "Endurance",
                null,
                minutes,
                wanted,
                minutes == null || wanted == null ? null : (Double) (minutes - wanted),
                "min",
                sentence,
                List.of());
    }
}
