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
}
