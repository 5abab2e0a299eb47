package dev.ledgerwing.core.build;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RadioDeedsTest {

    private final Build build = Builds.seeded(4);

    @Test
    void aControlGoesWithItsMixesAndItsChannels() {
        Build without = RadioDeeds.withoutControl(build, "a");

        assertThat(without.radio().controls()).extracting(Control::code).containsExactly("left-stick", "b");
        assertThat(without.radio().channels()).extracting(Channel::control).containsOnlyNulls();
    }

    @Test
    void theBoardAboardIsNoneWhenItsCandidateGoes() {
        Build without = RadioDeeds.withoutBoard(build, "small");

        assertThat(without.outputs().boards()).isEmpty();
        assertThat(without.outputs().fitted().board()).isNull();
        assertThat(without.outputs().fitted().part())
                .isEqualTo(build.outputs().fitted().part());
    }

    @Test
    void aFunctionGoesFromItsChannelAndFromCombinationsGivenUp() {
        Build without = SupplyDeeds.withoutFunctions(build, List.of("lights"));

        assertThat(without.radio().channels().get(0).functions()).containsExactly("gear");
        assertThat(without.radio().notNeeded()).isEmpty();
    }

    @Test
    void aCombinationGivenUpOnlyInAPhaseThatGoesDoesNotSpreadToEveryPhase() {
        NotNeeded everywhere = new NotNeeded("N2", List.of(), states(), "Mara", "never flown");
        NotNeeded both = new NotNeeded("N3", List.of("power-on", "cruise"), states(), "Mara", "never flown");
        NotNeeded cruise = new NotNeeded("N4", List.of("cruise"), states(), "Mara", "never flown");
        Build given = build.withNotNeeded(List.of(everywhere, both, cruise));

        Build without = SupplyDeeds.withoutPhases(given, List.of("cruise"));

        assertThat(without.radio().notNeeded())
                .containsExactly(everywhere, new NotNeeded("N3", List.of("power-on"), states(), "Mara", "never flown"));
        assertThat(without.radio().functions().get(0).demandByPhase()).containsOnlyKeys("power-on");
        assertThat(without.radio().functions().get(1).demandByPhase()).isEqualTo(Map.of());
    }

    @Test
    void aStateGoesByItsNewNameWhereverItIsMentioned() {
        StateRenaming renaming = new StateRenaming(Map.of("up", "stowed"));
        List<RadioFunction> functions = build.radio().functions().stream()
                .map(each -> each.code().equals("gear") ? renamed(each, renaming) : each)
                .toList();
        NotNeeded given = new NotNeeded("N9", List.of(), states(), "Mara", "never flown");
        Build before = build.withNotNeeded(List.of(given));

        Build after = RadioDeeds.withFunctions(before, functions, Map.of("gear", renaming));

        assertThat(after.radio().functions().get(0).states()).containsExactly("stowed", "down");
        assertThat(after.radio().functions().get(0).demandByPhase().toString())
                .isEqualTo(before.radio()
                        .functions()
                        .get(0)
                        .demandByPhase()
                        .toString()
                        .replace("up", "stowed"));
        assertThat(after.radio().channels().toString())
                .isEqualTo(before.radio().channels().toString().replace("up", "stowed"))
                .contains("stowed");
        assertThat(after.radio().notNeeded().get(0).states())
                .containsExactly(new FunctionState("gear", "stowed"), new FunctionState("lights", "off"));
    }

    private static RadioFunction renamed(RadioFunction was, StateRenaming renaming) {
        return new RadioFunction(
                was.code(),
                was.name(),
                was.kind(),
                was.states().stream().map(renaming::of).toList(),
                was.criticality(),
                was.irreversible(),
                was.onSignalLoss() == null ? null : renaming.of(was.onSignalLoss()),
                was.decodedBy(),
                renaming.of(was.demandByPhase()),
                was.otherwiseBy());
    }

    private static List<FunctionState> states() {
        return List.of(new FunctionState("gear", "up"), new FunctionState("lights", "off"));
    }
}
