package dev.ledgerwing.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TypedTest {

    private static Typed typed(Map<String, String> texts) {
        return new Typed(texts.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, each -> List.of(each.getValue()))));
    }

    @Test
    void rowsAreCountedByTheirHighestNumber() {
        Typed typed = typed(Map.of("p.0.a", "1", "p.2.a", "3", "q.5.a", "x", "p.x.a", "", "p.999.a", ""));
        assertThat(typed.rows("p")).isEqualTo(3);
        assertThat(typed.withRow("p").rows("p")).isEqualTo(4);
        assertThat(typed.rows("none")).isZero();
    }

    @Test
    void removingARowMovesThoseBehindItUp() {
        Typed left = typed(Map.of("p.0.a", "1", "p.1.a", "2", "p.2.a", "3", "other", "o"))
                .withoutRow("p", 1);
        assertThat(left.text("p.0.a")).isEqualTo("1");
        assertThat(left.text("p.1.a")).isEqualTo("3");
        assertThat(left.rows("p")).isEqualTo(2);
        assertThat(left.text("other")).isEqualTo("o");
    }

    @Test
    void whatWasNotTouchedFollowsWhatOthersStored() {
        Typed base = typed(Map.of("a", "1", "b", "2"));
        Typed head = typed(Map.of("a", "10", "b", "20", "c", "30"));
        Typed mine = typed(Map.of("a", "1", "b", "5"));
        Typed both = mine.onTopOf(base, head);
        assertThat(both.text("a")).isEqualTo("10");
        assertThat(both.text("b")).isEqualTo("5");
        assertThat(both.text("c")).isEqualTo("30");
    }

    @Test
    void aBoxThatIUntickedStaysUnticked() {
        Typed ticked = new Typed(Map.of("box", List.of("L1", "L2")));
        Typed unticked = new Typed(Map.of());
        assertThat(unticked.onTopOf(ticked, ticked).isTicked("box")).isFalse();
        assertThat(ticked.onTopOf(ticked, unticked).isTicked("box", "L1")).isFalse();
    }

    @Test
    void aRowChangesPlacesWithItsNeighbourAndTakesEverythingAlong() {
        Typed swapped = typed(Map.of("p.0.a", "1", "p.1.a", "2", "p.1.duty.climb", "50", "p.10.a", "11", "other", "o"))
                .withRowsSwapped("p", 0);
        assertThat(swapped.text("p.0.a")).isEqualTo("2");
        assertThat(swapped.text("p.0.duty.climb")).isEqualTo("50");
        assertThat(swapped.text("p.1.a")).isEqualTo("1");
        assertThat(swapped.text("p.1.duty.climb")).isEmpty();
        assertThat(swapped.text("p.10.a")).isEqualTo("11");
    }

    @Test
    void theFirstRowMovesNoFurtherUpAndTheLastNoFurtherDown() {
        Typed typed = typed(Map.of("p.0.a", "1", "p.1.a", "2"));
        assertThat(typed.withRowsSwapped("p", -1)).isEqualTo(typed);
        assertThat(typed.withRowsSwapped("p", 1)).isEqualTo(typed);
    }

    @Test
    void anElementWhoseRowIsRemovedIsRemembered() {
        Typed left = typed(Map.of("p.0.code", "climb", "p.1.code", "cruise"))
                .withoutRow("p", 1)
                .withoutRow("p", 0);
        assertThat(left.gone("p")).containsExactly("cruise", "climb");
        assertThat(left.rows("p")).isZero();
    }

    @Test
    void theRowsOfAListStayTogetherWhenOthersPutOneInFront() {
        Typed base = typed(Map.of("p.0.code", "a", "p.0.name", "A", "q.0.name", "Q"));
        Typed head = typed(Map.of("p.0.code", "x", "p.0.name", "X", "p.1.code", "a", "p.1.name", "A", "q.0.name", "R"));
        Typed mine = typed(Map.of("p.0.code", "a", "p.0.name", "mine", "q.0.name", "Q"));
        Typed both = mine.onTopOf(base, head);
        assertThat(both.text("p.0.code")).isEqualTo("a");
        assertThat(both.text("p.0.name")).isEqualTo("mine");
        assertThat(both.rows("p")).isEqualTo(1);
        assertThat(both.text("q.0.name")).isEqualTo("R");
    }

    @Test
    void buttonsAddRowsOfAKindAndMoveThem() {
        Typed added = RowButton.pressed(typed(Map.of("row", "add:element:FUSE", "element.0.kind", "WIRE")))
                .orElseThrow();
        assertThat(added.text("element.1.kind")).isEqualTo("FUSE");
        Typed moved = RowButton.pressed(added.with("row", "earlier:element:1")).orElseThrow();
        assertThat(moved.text("element.0.kind")).isEqualTo("FUSE");
        Typed back = RowButton.pressed(moved.with("row", "later:element:0")).orElseThrow();
        assertThat(back.text("element.0.kind")).isEqualTo("WIRE");
        assertThat(RowButton.pressed(typed(Map.of("row", "drop:element:0")))).isEmpty();
    }
}
