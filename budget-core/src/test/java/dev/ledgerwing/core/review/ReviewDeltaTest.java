package dev.ledgerwing.core.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.ledgerwing.core.Ledgers;
import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.review.FindingChange.Kind;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReviewDeltaTest {

    private static final PartLine REST = Ledgers.certain("rest", 6864);
    private static final PartLine MORE = Ledgers.certain("more", 48);

    @Test
    void tellsTheImpactOfAPartThatBreaksTheTargetFurther() {
        assertThat(impact(aimingAt(6800, REST), aimingAt(6800, REST, MORE)))
                .containsExactly(
                        new ImpactPart("+48 g, predicted 6912 g: breaks the target by 112 g.", Verdict.BREAKS));
    }

    @Test
    void tellsThatTheTargetStillHolds() {
        assertThat(impact(aimingAt(9000, REST, MORE), aimingAt(9000, REST)))
                .containsExactly(new ImpactPart(
                        "−48 g, predicted 6864 g: holds the target with 2136 g to spare.", Verdict.HOLDS));
    }

    @Test
    void tellsThatTheReserveIsShort() {
        assertThat(impact(aimingAt(7000, REST), aimingAt(7000, REST, MORE)))
                .containsExactly(new ImpactPart(
                        "+48 g, predicted 6912 g: inside the target by 88 g, reserve wanted 700 g.", Verdict.TIGHT));
    }

    @Test
    void tellsThatTheMarginIsWithinTheUncertainty() {
        PartLine guess = Ledgers.line("guess", Category.STRUCTURE, 500, Basis.GUESSED);
        Build after = Ledgers.withTarget(7600, 0.0, Ledgers.with(REST, guess));
        assertThat(impact(Ledgers.withTarget(7600, 0.0, Ledgers.with(REST)), after))
                .containsExactly(new ImpactPart(
                        "+600 g with growth, predicted 7464 g: inside the target by 136 g, less than twice its uncertainty.",
                        Verdict.TIGHT));
    }

    @Test
    void tellsThatNothingChangedInTheMass() {
        assertThat(impact(aimingAt(9000, REST), aimingAt(9000, REST)))
                .containsExactly(new ImpactPart(
                        "Mass unchanged, predicted 6864 g: holds the target with 2136 g to spare.", Verdict.HOLDS));
    }

    @Test
    void tellsThatThereIsNoTargetToHold() {
        assertThat(impact(Ledgers.with(REST), Ledgers.with(REST, MORE)))
                .containsExactly(new ImpactPart("+48 g, predicted 6912 g: no target is set.", Verdict.UNKNOWN));
    }

    @Test
    void tellsOfAPartWithoutAMass() {
        assertThat(impact(aimingAt(9000, REST), aimingAt(9000, REST, unknown("tray"))))
                .containsExactly(
                        new ImpactPart(
                                "Mass unchanged, predicted 6864 g: 2136 g to the target, but not every mass is known.",
                                Verdict.UNKNOWN),
                        new ImpactPart(
                                "“Part tray” has no mass yet and is in no sum: weigh it, or enter a guess.",
                                Verdict.UNKNOWN));
    }

    @Test
    void countsWhatIsPutRight() {
        assertThat(impact(aimingAt(9000, REST, unknown("tray")), aimingAt(9000, REST)))
                .containsExactly(
                        new ImpactPart(
                                "Mass unchanged, predicted 6864 g: holds the target with 2136 g to spare.",
                                Verdict.HOLDS),
                        new ImpactPart("One finding is put right.", null));
    }

    @Test
    void callsNothingPutRightThatWasNotWrong() {
        assertThat(impact(Ledgers.withBooking(42, aimingAt(9000, REST)), aimingAt(9000, REST)))
                .containsExactly(new ImpactPart(
                        "−42 g, predicted 6864 g: holds the target with 2136 g to spare.", Verdict.HOLDS));
    }

    @Test
    void doesNotSpellOutAHundredFindingsAlike() {
        List<PartLine> lines = new ArrayList<>(List.of(REST));
        for (int i = 0; i < 100; i++) {
            lines.add(unknown("u" + i));
        }
        List<ImpactPart> impact = impact(aimingAt(9000, REST), Ledgers.withTarget(9000, null, Ledgers.with(lines)));
        assertThat(impact).hasSize(5);
        assertThat(impact.get(4)).isEqualTo(new ImpactPart("And 97 more findings.", Verdict.UNKNOWN));
    }

    @Test
    void saysOneFindingInTheSingular() {
        List<PartLine> lines = new ArrayList<>(List.of(REST));
        for (int i = 0; i < 4; i++) {
            lines.add(unknown("u" + i));
        }
        List<ImpactPart> impact = impact(aimingAt(9000, REST), Ledgers.withTarget(9000, null, Ledgers.with(lines)));
        assertThat(impact.get(4)).isEqualTo(new ImpactPart("And one more finding.", Verdict.UNKNOWN));
    }

    @Test
    void givesTheChangeOfEachFigureThatDiffers() {
        ReviewDelta delta = between(aimingAt(9000, REST), aimingAt(9000, REST, MORE));
        assertThat(delta.figures())
                .extracting(FigureChange::name, FigureChange::before, FigureChange::after, FigureChange::change)
                .contains(
                        tuple("mass.basicG", 6864.0, 6912.0, 48.0),
                        tuple("mass.marginG", 2136.0, 2088.0, -48.0),
                        tuple("mass.lines", 1.0, 2.0, 1.0));
        assertThat(delta.figures()).extracting(FigureChange::name).doesNotContain("mass.targetG", "mass.growthG");
    }

    @Test
    void givesNoChangeOfAFigureThatWasNotKnown() {
        ReviewDelta delta = between(Ledgers.with(REST), aimingAt(9000, REST));
        assertThat(delta.figures())
                .extracting(FigureChange::name, FigureChange::before, FigureChange::after, FigureChange::change)
                .contains(tuple("mass.targetG", null, 9000.0, null));
    }

    @Test
    void listsFindingsThatAppearedDisappearedOrChanged() {
        Build before = Ledgers.withBooking(42, aimingAt(9000, REST, unknown("old")));
        Build after = aimingAt(6800, REST, unknown("new"));
        assertThat(between(before, after).findings())
                .extracting(
                        FindingChange::kind,
                        change -> change.finding().code(),
                        change -> change.finding().line())
                .containsExactly(
                        tuple(Kind.CHANGED, "mass.target", null),
                        tuple(Kind.APPEARED, "mass.unknown", "new"),
                        tuple(Kind.DISAPPEARED, "mass.unknown", "old"),
                        tuple(Kind.DISAPPEARED, "mass.booking", null));
    }

    @Test
    void followsALineThatIsRenamed() {
        PartLine renamed =
                PartLine.named("tray", "fuselage", "Battery tray", Category.STRUCTURE, 1, LineMass.notKnown());
        assertThat(between(Ledgers.with(REST, unknown("tray")), Ledgers.with(REST, renamed))
                        .findings())
                .isEmpty();
    }

    @Test
    void isEmptyBetweenEqualBuilds() {
        ReviewDelta delta = between(aimingAt(6800, REST), aimingAt(6800, REST));
        assertThat(delta.figures()).isEmpty();
        assertThat(delta.findings()).isEmpty();
    }

    private static PartLine unknown(String id) {
        return Ledgers.line(id, Category.STRUCTURE, 1, LineMass.notKnown());
    }

    private static Build aimingAt(double targetG, PartLine... lines) {
        return Ledgers.withTarget(targetG, null, Ledgers.with(lines));
    }

    private static ReviewDelta between(Build before, Build after) {
        return ReviewDelta.between(BuildReview.of(before), BuildReview.of(after));
    }

    private static List<ImpactPart> impact(Build before, Build after) {
        return between(before, after).impact().stream()
                .map(part -> new ImpactPart(Said.plain(part.text()), part.verdict()))
                .toList();
    }
}
