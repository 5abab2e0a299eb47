package dev.ledgerwing.core.radio.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What holds for any radio, on seeded ones; the seed is in the message. */
class PlanInvariantsTest {

    private static final int CASES = 150;

    @Test
    void everyPlanGivesAllThatIsAskedOfIt() {
        for (long seed = 1; seed <= CASES; seed++) {
            ChannelProblem problem = RandomRadio.small(seed);
            PlanAnswer answer = ChannelPlanner.plan(problem);
            if (answer.fits()) {
                assertThat(PlanBruteForce.isRight(problem, answer.channels()))
                        .as("seed %d: %s", seed, answer.channels())
                        .isTrue();
            }
        }
    }

    @Test
    void thePlanCheckFindsNoFaultInAPlan() {
        for (long seed = 1; seed <= 2 * CASES; seed++) {
            ChannelProblem problem = RandomRadio.of(seed);
            PlanAnswer answer = ChannelPlanner.plan(problem);
            if (answer.fits()) {
                assertThat(PlanCheck.of(with(problem, answer.channels())))
                        .as("seed %d", seed)
                        .isEmpty();
            }
        }
    }

    @Test
    void thePlanCheckFindsAFaultExactlyWhereTryingEverythingDoes() {
        int wrong = 0;
        for (long seed = 1; seed <= CASES; seed++) {
            ChannelProblem problem = RandomRadio.small(seed);
            PlanAnswer answer = ChannelPlanner.plan(problem);
            Random random = new Random(seed);
            for (int i = 0; i < 10 && answer.fits() && !answer.channels().isEmpty(); i++) {
                List<Channel> mutated = mutated(problem, answer.channels(), random);
                boolean right = PlanBruteForce.isRight(problem, mutated);
                wrong += right ? 0 : 1;
                assertThat(PlanCheck.of(with(problem, mutated)).isEmpty())
                        .as("seed %d, %s", seed, mutated)
                        .isEqualTo(right);
            }
        }
        assertThat(wrong).isGreaterThan(100);
    }

    @Test
    void tryingEverythingFindsNoBetterPlan() {
        for (long seed = 1; seed <= CASES; seed++) {
            ChannelProblem problem = RandomRadio.tiny(seed);
            PlanAnswer answer = ChannelPlanner.plan(problem);
            Integer cost = answer.sharedWeight() * 100 + answer.channels().size();
            assertThat(answer.fits() ? cost : null).as("seed %d", seed).isEqualTo(new Everything(problem).least());
        }
    }

    @Test
    void aPlanMadeAgainFromItselfIsTheSame() {
        for (long seed = 1; seed <= CASES; seed++) {
            ChannelProblem problem = with(RandomRadio.of(seed), List.of());
            PlanAnswer answer = ChannelPlanner.plan(problem);
            assertThat(ChannelPlanner.plan(with(problem, answer.channels())).channels())
                    .as("seed %d", seed)
                    .isEqualTo(answer.channels());
        }
    }

    /** Where the last command is held, a demand also says what can be borne then: it is left out. */
    @Test
    void oneDemandMoreNeverLowersTheNeed() {
        for (long seed = 1; seed <= CASES; seed++) {
            ChannelProblem less = withoutHold(RandomRadio.of(seed));
            ChannelProblem more = withOneDemandMore(less, new Random(seed));
            int before = ChannelPlanner.channelsNeeded(less).orElse(Integer.MAX_VALUE);
            int after = ChannelPlanner.channelsNeeded(more).orElse(Integer.MAX_VALUE);
            assertThat(after).as("seed %d", seed).isGreaterThanOrEqualTo(before);
        }
    }

    @Test
    void anotherOrderChangesNothingButNames() {
        for (long seed = 1; seed <= CASES; seed++) {
            ChannelProblem problem = RandomRadio.of(seed);
            PlanAnswer answer = ChannelPlanner.plan(problem);
            PlanAnswer turned = ChannelPlanner.plan(shuffled(problem, new Random(seed)));
            assertThat(List.of(
                            turned.outcome(),
                            turned.sharedWeight(),
                            turned.channels().size()))
                    .as("seed %d", seed)
                    .isEqualTo(List.of(
                            answer.outcome(),
                            answer.sharedWeight(),
                            answer.channels().size()));
        }
    }

    private static ChannelProblem with(ChannelProblem problem, List<Channel> channels) {
        Radio radio = problem.radio();
        return new ChannelProblem(
                new Radio(radio.link(), radio.controls(), radio.functions(), channels, radio.notNeeded()),
                problem.phases());
    }

    private static ChannelProblem withoutHold(ChannelProblem problem) {
        Radio radio = problem.radio();
        boolean holds = radio.link() != null && radio.link().onLoss() == RadioLink.OnLoss.HOLD;
        RadioLink link = holds ? RadioLink.of(3) : radio.link();
        return new ChannelProblem(
                new Radio(link, radio.controls(), radio.functions(), radio.channels(), radio.notNeeded()),
                problem.phases());
    }

    private static ChannelProblem withFunctions(ChannelProblem problem, List<RadioFunction> functions) {
        Radio radio = problem.radio();
        return new ChannelProblem(
                new Radio(radio.link(), radio.controls(), functions, radio.channels(), radio.notNeeded()),
                problem.phases());
    }

    private static ChannelProblem shuffled(ChannelProblem problem, Random random) {
        List<RadioFunction> functions = new ArrayList<>(problem.radio().functions());
        List<Control> controls = new ArrayList<>(problem.radio().controls());
        List<Phase> phases = new ArrayList<>(problem.phases());
        Collections.shuffle(functions, random);
        Collections.shuffle(controls, random);
        Collections.shuffle(phases, random);
        Radio radio = problem.radio();
        return new ChannelProblem(
                new Radio(radio.link(), controls, functions, radio.channels(), radio.notNeeded()), phases);
    }

    private static ChannelProblem withOneDemandMore(ChannelProblem problem, Random random) {
        if (problem.phases().isEmpty()) {
            return problem;
        }
        List<RadioFunction> functions = new ArrayList<>(problem.radio().functions());
        RadioFunction function = functions.get(0);
        String phase =
                problem.phases().get(random.nextInt(problem.phases().size())).code();
        Demand now = function.demandIn(phase);
        List<String> allowed = function.states().stream().filter(now::allows).toList();
        Set<String> must = new HashSet<>(now.mustSelect());
        must.add(allowed.get(random.nextInt(allowed.size())));
        Map<String, Demand> demands = new TreeMap<>(function.demandByPhase());
        demands.put(phase, new Demand(List.copyOf(must), now.mayHave()));
        functions.set(0, function.withDemandByPhase(demands));
        return withFunctions(problem, functions);
    }

    /** One state at one position, or one preset, or the functions of two channels thrown together. */
    private static List<Channel> mutated(ChannelProblem problem, List<Channel> channels, Random random) {
        List<Channel> mutated = new ArrayList<>(channels);
        int c = random.nextInt(channels.size());
        Channel channel = channels.get(c);
        if (channel.carries().isEmpty()) {
            return mutated;
        }
        List<Carried> carries = new ArrayList<>(channel.carries());
        Carried carried = carries.get(0);
        List<String> all = problem.radio().functions().stream()
                .filter(function -> function.code().equals(carried.function()))
                .findFirst()
                .orElseThrow()
                .states();
        String other = all.get(random.nextInt(all.size()));
        if (random.nextInt(5) == 0) {
            carries.set(0, new Carried(carried.function(), carried.states(), other));
        } else {
            List<String> states = new ArrayList<>(carried.states());
            states.set(random.nextInt(states.size()), other);
            carries.set(0, new Carried(carried.function(), states, carried.presetState()));
        }
        mutated.set(c, channel.withCarries(carries));
        return mutated;
    }

    /** Every way to split the functions and to give every part a control. */
    private static final class Everything {

        private final ChannelProblem problem;
        private final List<RadioFunction> functions;
        private final List<List<RadioFunction>> groups = new ArrayList<>();
        private final int channels;
        private @Nullable Integer least;

        Everything(ChannelProblem problem) {
            this.problem = problem;
            functions = problem.radio().functions().stream()
                    .filter(function -> function.otherwiseBy() == null)
                    .toList();
            RadioLink link = problem.radio().link();
            channels = link == null ? 0 : link.channels();
        }

        @Nullable
        Integer least() {
            split(0);
            return least;
        }

        private void split(int next) {
            if (next == functions.size()) {
                judge();
                return;
            }
            for (int i = 0; i < groups.size(); i++) {
                groups.get(i).add(functions.get(next));
                split(next + 1);
                groups.get(i).remove(groups.get(i).size() - 1);
            }
            groups.add(new ArrayList<>(List.of(functions.get(next))));
            split(next + 1);
            groups.remove(groups.size() - 1);
        }

        private void judge() {
            int weight = 0;
            for (List<RadioFunction> group : groups) {
                for (RadioFunction function : group) {
                    boolean light = function.criticality() == RadioFunction.Criticality.CONVENIENCE;
                    weight += (light ? 1 : 3) * (group.size() - 1);
                }
            }
            int cost = weight * 100 + groups.size();
            boolean better = least == null || cost < least;
            if (better && groups.size() <= channels && controlled(0, new HashSet<>())) {
                least = cost;
            }
        }

        private boolean controlled(int group, Set<String> taken) {
            if (group == groups.size()) {
                return true;
            }
            for (Control control : problem.radio().controls()) {
                Set<String> more = new HashSet<>(control.mixes());
                more.add(control.code());
                if (Collections.disjoint(more, taken)
                        && PlanBruteForce.canBeCarried(problem, control, groups.get(group))) {
                    more.addAll(taken);
                    if (controlled(group + 1, more)) {
                        return true;
                    }
                }
            }
            return false;
        }
    }
}
