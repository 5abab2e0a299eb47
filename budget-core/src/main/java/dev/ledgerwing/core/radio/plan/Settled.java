package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/** What pins settle before a plan is made, and what is left. */
final class Settled {

    private final ChannelProblem problem;
    private final List<Draft> pins = new ArrayList<>();
    private final Set<String> pinned = new HashSet<>();
    private final Set<Integer> numbers = new HashSet<>();
    private final List<Control> free;
    private final Stock[] stock;
    private final AtomicBoolean possible = new AtomicBoolean(true);

    private Settled(ChannelProblem problem) {
        this.problem = problem;
        free = new ArrayList<>(problem.free());
        stock = new Stock[] {Stock.of(problem.stepping())};
        problem.radio().channels().stream().filter(Channel::pinned).forEach(this::settle);
    }

    static Settled of(ChannelProblem problem) {
        return new Settled(problem);
    }

    /** Functions that are gone or that need no channel leave the pin; when none of them is left, the pin goes too. */
    private void settle(Channel pin) {
        List<RadioFunction> functions = problem.onTheRadio().stream()
                .filter(function -> pin.functions().contains(function.code()))
                .toList();
        if (functions.isEmpty() && !pin.carries().isEmpty()) {
            return;
        }
        Draft draft = new Draft(functions, pin, named(pin.control()));
        pins.add(draft);
        demand(draft.mayBeOne() && numbers.add(pin.number()));
        functions.forEach(function -> demand(pinned.add(function.code())));
        if (draft.control() != null) {
            take(draft, draft.control());
        }
    }

    private @Nullable Control named(@Nullable String code) {
        return problem.radio().controls().stream()
                .filter(control -> control.code().equals(code))
                .findFirst()
                .orElse(null);
    }

    private void take(Draft draft, Control control) {
        boolean steps = control.kind().steps();
        demand(draft.functions().isEmpty() || draft.switched() == steps);
        if (steps) {
            demand(stock().left().contains(control));
            stock[0] = stock().without(control);
        } else {
            demand(free.remove(control));
        }
    }

    private void demand(boolean holds) {
        if (!holds) {
            possible.set(false);
        }
    }

    /** False where the pins themselves cannot be. */
    boolean possible() {
        return possible.get();
    }

    List<Draft> pins() {
        return pins;
    }

    boolean within(int channels) {
        return numbers.stream().allMatch(number -> number <= channels);
    }

    Stock stock() {
        return stock[0];
    }

    /** Sticks and sliders that drive no pinned channel. */
    List<Control> free() {
        return free;
    }

    List<RadioFunction> unpinned() {
        return problem.onTheRadio().stream()
                .filter(function -> !pinned.contains(function.code()))
                .toList();
    }
}
