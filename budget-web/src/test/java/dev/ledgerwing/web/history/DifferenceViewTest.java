package dev.ledgerwing.web.history;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.BuildChange;
import dev.ledgerwing.core.build.Category;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.core.words.EditText;
import dev.ledgerwing.web.desk.Revision;
import dev.ledgerwing.web.desk.Snapshot;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DifferenceViewTest {

    private static Build withParts(int count) {
        List<PartLine> lines = IntStream.range(0, count)
                .mapToObj(i -> PartLine.named(
                        "L" + i,
                        "wing",
                        "Rib " + i,
                        Category.STRUCTURE,
                        1,
                        LineMass.of(Mass.ofGrams(10), Basis.WEIGHED)))
                .toList();
        return Build.blank(
                        new Airframe("dunlin", "Dunlin", null, Stage.DESIGN, "nose tip"),
                        new MassBudget(null, null, null, null))
                .withAssemblies(List.of(new Assembly("wing", "Wing", Assembly.MovesWith.WING)))
                .withLines(lines);
    }

    private static Snapshot snapshot(Build build) {
        Revision revision = new Revision(
                1, "Ines", Instant.EPOCH, "parts", "", Nature.FITTED, null, Mass.ZERO, Mass.ZERO, Verdict.UNKNOWN);
        return new Snapshot(revision, build, BuildReview.of(build), "0".repeat(64));
    }

    private static DifferenceView view(int parts, int start) {
        Build before = withParts(0);
        Build after = withParts(parts);
        return new DifferenceView.Between(snapshot(before), snapshot(after), Figures.METRIC)
                .told(BuildChange.between("parts", Nature.FITTED, before, after), start);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "450, 0, 1, 200, -, 200",
                "450, 200, 201, 400, 0, 400",
                "450, 400, 401, 450, 200, -",
                "450, 9999, 401, 450, 200, -",
                "450, -5, 1, 200, -, 200",
                "200, 0, 1, 200, -, -",
                "0, 0, 0, 0, -, -"
            })
    void manyEditsComeInPages(int parts, int start, int from, int to, Integer previous, Integer next) {
        DifferenceView view = view(parts, start);
        assertThat(view.from()).isEqualTo(from);
        assertThat(view.to()).isEqualTo(to);
        assertThat(view.count()).isEqualTo(parts);
        assertThat(view.previous()).isEqualTo(previous);
        assertThat(view.next()).isEqualTo(next);
        assertThat(view.edits()).hasSize(to == 0 ? 0 : to - from + 1);
    }

    @Test
    void aPageShowsTheEditsItCounts() {
        assertThat(view(450, 200).edits())
                .extracting(EditText::name)
                .startsWith("Rib 200")
                .endsWith("Rib 399");
    }

    @Test
    void figuresThatNeitherHasAreLeftOut() {
        assertThat(view(1, 0).figures())
                .extracting(FigureRow::label)
                .containsExactly("Basic mass", "Growth allowance", "Predicted mass", "Lines", "Weighed, of basic mass");
    }
}
