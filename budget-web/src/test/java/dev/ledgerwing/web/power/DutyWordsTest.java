package dev.ledgerwing.web.power;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Phase;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DutyWordsTest {

    private final List<Phase> phases = List.of(phase("climb"), phase("cruise"), phase("landing"));

    private static Phase phase(String code) {
        return new Phase(code, code, null, false, null, List.of(), false);
    }

    private String words(Map<String, Double> duty) {
        return DutyWords.of(
                new ElectricalLoad(
                        null, ElectricalLoad.Draws.CONSTANT_CURRENT, 1.0, null, null, null, duty, null, null),
                phases);
    }

    @Test
    void aPhaseThatIsNotNamedCountsInFull() {
        assertThat(words(Map.of())).isEqualTo("all the time");
        assertThat(words(Map.of("cruise", 1.0))).isEqualTo("all the time");
    }

    @Test
    void saysWhereItRunsLess() {
        assertThat(words(Map.of("cruise", 0.21, "landing", 0.0)))
                .isEqualTo("21\u2009% in cruise; off in landing; else all the time");
        assertThat(words(Map.of("climb", 0.5, "cruise", 0.5, "landing", 0.0)))
                .isEqualTo("50\u2009% in climb, 50\u2009% in cruise; off in landing");
    }

    @Test
    void saysThatItNeverRuns() {
        assertThat(words(Map.of("climb", 0.0, "cruise", 0.0, "landing", 0.0))).isEqualTo("always off");
    }
}
