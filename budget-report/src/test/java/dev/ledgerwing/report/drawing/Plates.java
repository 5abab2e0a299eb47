package dev.ledgerwing.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.report.drawing.Drawn.Label;
import java.util.List;

/** What every drawing has to keep to. */
final class Plates {

    private Plates() {}

    static void assertLabelsAreClear(Drawn drawn) {
        List<Label> labels = drawn.labels();
        Box sheet = drawn.sheet();
        for (Label label : labels) {
            assertThat(label.box().isInside(sheet))
                    .as(label + " inside " + sheet)
                    .isTrue();
            assertThat(drawn.strokes()).as("lines through " + label).noneMatch(stroke -> stroke.crosses(label.box()));
            assertThat(labels.subList(labels.indexOf(label) + 1, labels.size()))
                    .as("labels on " + label)
                    .noneMatch(other -> other.box().overlaps(label.box()));
        }
    }
}
