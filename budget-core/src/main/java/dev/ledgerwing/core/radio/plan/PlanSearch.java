package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** Finds which functions go together: what pins settle, what is alone by itself, and a cover of the rest. */
final class PlanSearch {

    private final ChannelProblem problem;
    private final Settled settled;
    private final GroupTable table;
    private final List<Draft> fixed = new ArrayList<>();
    private final BitSet sharing = new BitSet();
    private final boolean possible;

    private PlanSearch(ChannelProblem problem) {
        this.problem = problem;
        settled = Settled.of(problem);
        table = new GroupTable(
                CodedRadio.of(problem, problem.switched()),
                Stock.of(problem.stepping()).layouts());
        fixed.addAll(settled.pins());
        for (RadioFunction function : settled.unpinned()) {
            if (function.mayShare()) {
                sharing.set(problem.switched().indexOf(function));
            } else {
                fixed.add(Draft.of(List.of(function)));
            }
        }
        possible = settled.possible() && enoughToMove() && pinsCarried();
    }

    static PlanSearch of(ChannelProblem problem) {
        return new PlanSearch(problem);
    }

    /** Every proportional function has a stick or a slider. */
    private boolean enoughToMove() {
        long wanted = fixed.stream()
                .filter(draft -> draft.proportional() && draft.control() == null)
                .count();
        return wanted <= settled.free().size();
    }

    private boolean pinsCarried() {
        return settled.pins().stream().filter(Draft::switched).allMatch(this::isCarried);
    }

    private boolean isCarried(Draft pin) {
        Control control = pin.control();
        int kind = control == null ? -1 : Stock.of(problem.stepping()).kind(control);
        return kind < 0 || ((table.kinds(group(pin)) >> kind) & 1) != 0;
    }

    private BitSet group(Draft draft) {
        BitSet group = new BitSet();
        draft.functions().forEach(function -> group.set(problem.switched().indexOf(function)));
        return group;
    }

    boolean fits(int channels) {
        return possible && settled.within(channels) && AnyCover.exists(task(), channels - fixed.size());
    }

    /** On any number of channels. */
    boolean fitsAtAll() {
        return possible && AnyCover.exists(task(), sharing.cardinality());
    }

    Optional<List<Draft>> best(int channels) {
        if (!possible || !settled.within(channels)) {
            return Optional.empty();
        }
        CoverTask task = task();
        return Optional.ofNullable(Cover.best(task, channels - fixed.size()))
                .map(best -> drafts(RecordedGroups.ifAsGood(task, problem, best)));
    }

    OptionalInt fewest() {
        CoverTask task = task();
        for (int groups = 0; possible && groups <= sharing.cardinality(); groups++) {
            if (AnyCover.exists(task, groups)) {
                return OptionalInt.of(fixed.size() + groups);
            }
        }
        return OptionalInt.empty();
    }

    private CoverTask task() {
        List<Integer> alone = fixed.stream()
                .filter(draft -> draft.switched() && draft.control() == null)
                .map(draft -> table.kinds(group(draft)))
                .toList();
        return new CoverTask(table, settled.stock(), alone, sharing);
    }

    /** In the order of their first function in the record; what carries nothing comes last. */
    private List<Draft> drafts(List<BitSet> groups) {
        List<Draft> drafts = new ArrayList<>(fixed);
        List<RadioFunction> switched = problem.switched();
        groups.forEach(group ->
                drafts.add(Draft.of(group.stream().mapToObj(switched::get).toList())));
        drafts.sort(Comparator.comparingInt(this::place));
        return drafts;
    }

    private int place(Draft draft) {
        @Nullable
        RadioFunction first =
                draft.functions().isEmpty() ? null : draft.functions().get(0);
        return first == null ? Integer.MAX_VALUE : problem.radio().functions().indexOf(first);
    }
}
