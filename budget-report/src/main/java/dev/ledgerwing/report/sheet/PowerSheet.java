package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.power.energy.Endurance;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.report.drawing.Picture;
import dev.ledgerwing.report.drawing.PowerPictures;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The power sheet, ready to be printed: nothing in it needs computing. What is not known says so.
 *
 * @param feeds the way of the current, drawn
 * @param harmless what may fail without anything lost
 * @param energy by phase, drawn
 * @param day in the sun, drawn; null = none is looked at
 */
public record PowerSheet(
        SheetTitle title,
        VerdictMark power,
        List<Fact> facts,
        Picture feeds,
        List<RailEntry> rails,
        List<FeedEntry> ratings,
        List<FailureEntry> failures,
        List<String> harmless,
        List<BatteryEntry> batteries,
        List<ChargeEntry> charging,
        List<Fact> endurance,
        Picture energy,
        @Nullable Picture day,
        List<FindingEntry> findings)
        implements PrintedSheet {

    public PowerSheet {
        facts = List.copyOf(facts);
        rails = List.copyOf(rails);
        ratings = List.copyOf(ratings);
        failures = List.copyOf(failures);
        harmless = List.copyOf(harmless);
        batteries = List.copyOf(batteries);
        charging = List.copyOf(charging);
        endurance = List.copyOf(endurance);
        findings = List.copyOf(findings);
    }

    /** The sheet of a reviewed build. */
    public static PowerSheet of(BuildReview review, SheetHead head) {
        PowerStatement power = review.power();
        DayBalance day = power.day();
        PowerSummary summary = new PowerSummary(review);
        return new PowerSheet(
                SheetTitle.of(review.build().airframe(), head),
                summary.verdict(),
                summary.facts(),
                PowerPictures.feeds(power),
                RailEntry.of(power.network()),
                FeedEntry.of(power.network()),
                FailureEntry.of(power.failures(), summary.isFlightKnown()),
                FailureEntry.harmless(power.failures()),
                BatteryEntry.of(review.build()),
                ChargeEntry.of(power.charging(), review.build()),
                endurance(review),
                PowerPictures.energy(power),
                day == null ? null : PowerPictures.day(power, day),
                review.findings(Budget.POWER).stream().map(FindingEntry::of).toList());
    }

    private static List<Fact> endurance(BuildReview review) {
        Endurance endurance = review.power().energy().endurance();
        Double stretch = endurance.stretchMinutes();
        var stretching = endurance.plan().stretching();
        String reserve = PowerSummary.time(review.build().power().rules().landingReserveInForce());
        boolean fits = !endurance.packs().isEmpty() && endurance.holdsFixedPhases();
        return List.of(
                new PowerSummary(review).endurance(),
                new Fact(
                        "Fixed phases",
                        PowerSummary.time(endurance.plan().fixedMinutes()),
                        fits ? "they fit in" : "not known to fit in"),
                new Fact(
                        stretching == null ? "The rest" : stretching.name(),
                        stretch == null ? "not known" : PowerSummary.time(stretch),
                        "takes what is left"),
                new Fact("Kept for the landing", reserve, "on top of what must stay in the pack"),
                new Fact(
                        "Spent first",
                        endurance.limiting() == null
                                ? "not known"
                                : Objects.requireNonNull(endurance.limiting())
                                        .battery()
                                        .name(),
                        Figures.number(endurance.packs().size(), 0) + " packs give something"));
    }

    @Override
    public String template() {
        return "sheets/power";
    }
}
