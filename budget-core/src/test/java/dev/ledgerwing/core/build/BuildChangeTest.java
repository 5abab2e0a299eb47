package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import dev.ledgerwing.core.build.Edit.PutElement;
import dev.ledgerwing.core.quantity.Mass;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BuildChangeTest {

    @Test
    void tellsAnEditByWhatStoodThereBeforeAndAfter() {
        Build before = Builds.small();
        List<PartLine> lines = new ArrayList<>(before.lines());
        lines.set(0, lines.get(0).withMass(LineMass.of(Mass.ofGrams(131), Basis.WEIGHED)));

        BuildChange change = BuildChange.between("spar weighed", Nature.CORRECTED, before, before.withLines(lines));

        assertThat(change.edits())
                .containsExactly(
                        new PutElement(ElementKind.LINE, "L001", before.lines().get(0), lines.get(0), null));
        assertThat(FieldDifference.between(before.lines().get(0), lines.get(0)))
                .extracting(FieldDifference::field)
                .containsExactly("mass");
    }

    @Test
    void refusesARecordItWasNotMadeAgainst() {
        Build before = Builds.small();
        Build after = before.withBudget(Builds.target(2100));
        BuildChange change = BuildChange.between("more room", Nature.FITTED, before, after);

        assertThatIllegalStateException()
                .isThrownBy(() -> change.applyTo(before.withBudget(Builds.target(1500))))
                .withMessageContaining("budget");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void appliedItGivesTheRecordAfterAndReversedTheRecordBefore(long seed) {
        for (int round = 0; round < 20; round++) {
            Build before = Builds.seeded(seed * 1000 + round);
            Build after = Builds.seeded(seed * 1000 + round + 500);

            BuildChange change = BuildChange.between("anything", Nature.FITTED, before, after);

            assertThat(change.applyTo(before)).isEqualTo(after);
            assertThat(BuildChange.between("back", Nature.FITTED, after, before).applyTo(after))
                    .isEqualTo(before);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35})
    void followsPartsThatOnlyMovedInTheOrder(long seed) {
        Build before = Builds.seeded(seed);
        List<PartLine> shuffled = new ArrayList<>(before.lines());
        Collections.shuffle(shuffled, new Random(seed));
        Build after = before.withLines(shuffled);

        assertThat(BuildChange.between("sorted", Nature.FITTED, before, after).applyTo(before))
                .isEqualTo(after);
    }

    @Test
    void tenThousandPartsCanBeAddedAndTakenBack() {
        Build before = Builds.small();
        List<PartLine> lines = new ArrayList<>(before.lines());
        for (int i = 0; i < 10_000; i++) {
            lines.add(Builds.line("N" + i, "wing", "Rib " + i, Category.STRUCTURE, 1, LineMass.notKnown()));
        }
        Build after = before.withLines(lines);

        BuildChange change = BuildChange.between("import", Nature.FITTED, before, after);

        assertThat(change.edits()).hasSize(10_000);
        assertThat(change.applyTo(before)).isEqualTo(after);
        assertThat(BuildChange.between("back", Nature.FITTED, after, before).applyTo(after))
                .isEqualTo(before);
    }
}
