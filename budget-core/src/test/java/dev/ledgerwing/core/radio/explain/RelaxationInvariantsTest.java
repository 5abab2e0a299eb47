package dev.ledgerwing.core.radio.explain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class RelaxationInvariantsTest {

    private static final int SEEDS = 250;

    @Test
    void everythingFitsOnceOneIsAccepted() {
        int accepted = 0;
        for (ChannelProblem problem : squeezes()) {
            Build build = Squeeze.build(problem);
            for (Relaxation each : Relaxations.of(ChannelProblem.of(build)).all()) {
                Build after = each.accept(build, "R. Heath", "seed");
                accepted++;

                assertThat(ChannelPlanner.fits(ChannelProblem.of(after)))
                        .as("%s of %s", each.key(), problem)
                        .isTrue();
            }
        }
        assertThat(accepted).isGreaterThan(SEEDS);
    }

    @Test
    void keysTellThemApart() {
        for (ChannelProblem problem : squeezes()) {
            assertThat(Relaxations.of(problem).all())
                    .extracting(Relaxation::key)
                    .as("%s", problem)
                    .doesNotHaveDuplicates();
        }
    }

    @Test
    void theLossNeverFallsAlongTheList() {
        for (ChannelProblem problem : squeezes()) {
            assertThat(Relaxations.of(problem).all())
                    .extracting(Relaxation::loss)
                    .as("%s", problem)
                    .isSorted();
        }
    }

    /** The search holds concessions against the core first; here every one is tried on the whole. */
    @Test
    void noSingleConcessionIsMissed() {
        for (ChannelProblem problem : squeezes()) {
            List<String> found = Relaxations.of(problem).all().stream()
                    .map(Relaxation::key)
                    .sorted()
                    .toList();

            assertThat(found)
                    .as("%s", problem)
                    .isEqualTo(Explanation.doesNotFit(problem) ? everySingle(problem) : List.of());
        }
    }

    private static List<String> everySingle(ChannelProblem problem) {
        List<Relaxation> all = new ArrayList<>(positions(problem));
        List<Control> switches = problem.radio().controls().stream()
                .filter(each -> each.kind() == Control.Kind.SWITCH)
                .toList();
        for (int i = 0; i < switches.size(); i++) {
            for (int j = i + 1; j < switches.size(); j++) {
                all.addAll(mixes(problem, switches.get(i), switches.get(j)));
            }
        }
        List<RadioFunction> functions = problem.radio().functions();
        for (int i = 0; i < functions.size(); i++) {
            for (int j = i + 1; j < functions.size(); j++) {
                all.addAll(combinations(problem, functions.get(i), functions.get(j)));
            }
        }
        functions.stream()
                .filter(each -> !each.irreversible())
                .forEach(each -> List.of(OtherwiseBy.values()).forEach(by -> all.add(new OffTheRadio(each, by))));
        return all.stream()
                .filter(each -> ChannelPlanner.fits(each.in(problem)))
                .map(Relaxation::key)
                .sorted()
                .toList();
    }

    private static List<Relaxation> positions(ChannelProblem problem) {
        List<Relaxation> all = new ArrayList<>();
        for (Control control : problem.radio().controls()) {
            Integer has = control.positions();
            if (has != null) {
                IntStream.rangeClosed(has + 1, 6)
                        .mapToObj(each -> new MorePositions(control, each))
                        .filter(each -> ChannelPlanner.fits(each.in(problem)))
                        .findFirst()
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    private static List<Relaxation> mixes(ChannelProblem problem, Control one, Control other) {
        boolean pinned = problem.radio().channels().stream()
                .anyMatch(each ->
                        one.code().equals(each.control()) || other.code().equals(each.control()));
        return pinned
                ? List.of()
                : List.<Relaxation>of(new Mix(one, other), new Mix(other, one)).stream()
                        .filter(each -> ChannelPlanner.fits(each.in(problem)))
                        .limit(1)
                        .toList();
    }

    private static List<Relaxation> combinations(ChannelProblem problem, RadioFunction one, RadioFunction other) {
        List<Relaxation> all = new ArrayList<>();
        for (String first : one.states()) {
            for (String second : other.states()) {
                List<Phase> asking = problem.phases().stream()
                        .filter(each -> asks(one, each, first) && asks(other, each, second))
                        .toList();
                List<GiveUp> single = asking.stream()
                        .map(each -> new GiveUp(one, first, other, second, List.of(each)))
                        .filter(each -> ChannelPlanner.fits(each.in(problem)))
                        .toList();
                all.addAll(single);
                if (single.isEmpty() && asking.size() > 1) {
                    all.add(new GiveUp(one, first, other, second, asking));
                }
            }
        }
        return all;
    }

    private static boolean asks(RadioFunction function, Phase phase, String state) {
        return function.demandIn(phase.code()).mustSelect().contains(state);
    }

    private static List<ChannelProblem> squeezes() {
        return LongStream.rangeClosed(1, SEEDS).mapToObj(SeededSqueezes::of).toList();
    }
}
