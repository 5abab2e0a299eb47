package dev.ledgerwing.core.balance.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.Said;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadingChecksTest {

    private static final WeighInDraft TWO = Weighings.level(
            Weighings.support("Nose", "0", "0", "400 g"), Weighings.support("Mains", "600", "0", "600 g"));

    @Test
    void refusesTwoSupportsAtOnePoint() {
        assertThat(refused(Weighings.level(
                        Weighings.support("Left", "412", "0", "400 g"),
                        Weighings.support("Nose", "52", "0", "400 g"),
                        Weighings.support("Right", "412.5", "0", "400 g"))))
                .containsExactly(new Problem("supports[2].station", "“Right” stands at the same point as “Left”"));
    }

    @Test
    void refusesWhatCannotBeTakenOut() {
        WeighInDraft draft = Weighings.carrying(TWO, new ExtraItem("Strap", null, Basis.GUESSED, null));
        assertThat(refused(draft))
                .containsExactly(
                        new Problem(
                                "extra[0].massG", "“Strap” does not belong and has no mass: it cannot be taken out"),
                        new Problem(
                                "extra[0].station",
                                "“Strap” does not belong and has no station: it cannot be taken out of the balance"));
    }

    @Test
    void needsNoStationOfAnExtraItemWhereOnlyTheMassIsTold() {
        WeighInDraft draft = Weighings.carrying(
                Weighings.level(Weighings.support("Pan", "0", "0", "500 g")),
                new ExtraItem("Bag", Weighings.mass("20 g"), Basis.WEIGHED, null));
        assertThat(Weighings.answer(draft).mass()).isEqualTo(Weighings.mass("480 g"));
    }

    @Test
    void refusesATotalOfNothing() {
        assertThat(refused(Weighings.level(Weighings.support("Pan", "0", "0", "250 g", "250 g"))))
                .containsExactly(new Problem(
                        "supports", "net of the tare 0 g is left on the scales: there is nothing to compare"));
        assertThat(refused(Weighings.carrying(
                        TWO,
                        new ExtraItem("Rig", Weighings.mass("1001 g"), Basis.WEIGHED, Weighings.at("9", "0", "0")))))
                .containsExactly(new Problem(
                        "supports",
                        "without what does not belong −1 g is left on the scales: there is nothing to compare"));
    }

    @Test
    void refusesATiltOfNearlyNothing() {
        assertThat(refused(Weighings.draft(
                        2.5,
                        3.0,
                        Weighings.tilted("Nose", "0", "0", "400 g", "400 g"),
                        Weighings.tilted("Mains", "600", "0", "600 g", "600 g"))))
                .extracting(Problem::place)
                .containsExactly("tiltedNoseUpDeg");
    }

    /** By derivation: four readings in steps of 1 g are each rounded by 0.5 g at most, 2 g together. */
    @Test
    void refusesATiltedTotalThatTheScalesCannotExplain() {
        WeighInDraft draft = Weighings.draft(
                0,
                12.0,
                Weighings.tilted("Nose", "0", "0", "400 g", "380 g"),
                Weighings.tilted("Mains", "600", "0", "600 g", "622 g"));
        assertThat(refused(draft)).isEmpty();
        WeighInDraft worse = Weighings.draft(
                0,
                12.0,
                Weighings.tilted("Nose", "0", "0", "400 g", "380 g"),
                Weighings.tilted("Mains", "600", "0", "600 g", "623 g"));
        assertThat(refused(worse))
                .containsExactly(new Problem(
                        "supports",
                        "tilted, the readings add up to +3 g against the first weighing: more than such scales can be off"
                                + " (2 g)"));
    }

    private static List<Problem> refused(WeighInDraft draft) {
        return Weighings.read(draft).refused().stream()
                .map(problem -> new Problem(problem.place(), Said.plain(problem.sentence())))
                .toList();
    }
}
