package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.OtherwiseBy;
import dev.ledgerwing.core.radio.plan.ChannelPlanner;
import dev.ledgerwing.core.radio.plan.ChannelProblem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tries concessions. What makes everything fit makes the core of it fit, so each is held against the small core first; and
 * what concerns no function of the core cannot help. A concession that is not enough leaves other functions that do not fit:
 * the others are held against those, too, before they are tried on the whole.
 */
final class RelaxationSearch {

    private static final int MOST_POSITIONS_OFFERED = 6;
    private static final int FEW_FUNCTIONS = 8;

    /** How many concessions are tried on the whole at most, and how many of them without an answer. */
    private static final int MOST_TRIED = 500;

    private static final int MOST_IN_VAIN = 8;

    private final ChannelProblem whole;
    private final ChannelProblem core;

    /** What has been seen not to fit; a concession has to make each of them fit. */
    private final List<ChannelProblem> obstacles = new ArrayList<>();

    /** Whether changes of switches suffice, by their numbers of positions. */
    private final Map<List<Integer>, Boolean> seen = new HashMap<>();

    private final AtomicInteger tried = new AtomicInteger();
    private final AtomicInteger inVain = new AtomicInteger();

    RelaxationSearch(ChannelProblem problem) {
        whole = FewerFunctions.heeded(problem);
        core = Core.of(problem);
        obstacles.add(core);
    }

    List<Relaxation> found() {
        List<Relaxation> found = new ArrayList<>();
        List<Control> switches = whole.radio().controls().stream()
                .filter(each -> each.kind() == Control.Kind.SWITCH)
                .toList();
        switches.forEach(each -> morePositions(each).ifPresent(found::add));
        mixes(switches).forEach(each -> each.ifPresent(found::add));
        found.addAll(new Combinations(whole, core, this::becomesFit).found());
        for (RadioFunction function : core.radio().functions()) {
            if (!function.irreversible()) {
                offTheRadio(function).forEach(found::add);
            }
        }
        return found;
    }

    private Optional<Relaxation> morePositions(Control control) {
        Integer has = control.positions();
        return has == null
                ? Optional.empty()
                : IntStream.rangeClosed(has + 1, MOST_POSITIONS_OFFERED)
                        .mapToObj(positions -> new MorePositions(control, positions))
                        .filter(each -> each.isPossibleIn(whole.radio()) && suffices(each, has))
                        .map(Relaxation.class::cast)
                        .findFirst();
    }

    private List<Optional<Relaxation>> mixes(List<Control> switches) {
        List<Control> free = switches.stream().filter(this::mayBeMixed).toList();
        List<Optional<Relaxation>> mixes = new ArrayList<>();
        for (int i = 0; i < free.size(); i++) {
            for (int j = i + 1; j < free.size(); j++) {
                mixes.add(Stream.of(new Mix(free.get(i), free.get(j)), new Mix(free.get(j), free.get(i)))
                        .filter(each -> each.product() <= mostLevels() && suffices(each))
                        .map(Relaxation.class::cast)
                        .findFirst());
            }
        }
        return mixes;
    }

    /** The work grows steeply with levels and functions, so many levels are looked at for few functions only. */
    private int mostLevels() {
        long sharing = whole.radio().functions().stream()
                .filter(RadioFunction::mayShare)
                .count();
        return sharing <= FEW_FUNCTIONS ? Control.MOST_POSITIONS : MOST_POSITIONS_OFFERED;
    }

    private boolean mayBeMixed(Control control) {
        Radio radio = whole.radio();
        return radio.controls().stream().noneMatch(each -> each.mixes().contains(control.code()))
                && radio.channels().stream()
                        .filter(Channel::pinned)
                        .noneMatch(each -> control.code().equals(each.control()));
    }

    /** By whatever it is commanded instead, it leaves the same on the radio. */
    private Stream<OffTheRadio> offTheRadio(RadioFunction function) {
        return suffices(new OffTheRadio(function, OtherwiseBy.DATA_LINK))
                ? Stream.of(OtherwiseBy.values()).map(by -> new OffTheRadio(function, by))
                : Stream.empty();
    }

    /** Switches with as many positions are as good as each other, unless a pin or a mix binds them. */
    private boolean suffices(MorePositions more, int has) {
        return mayBeMixed(more.control())
                ? seen.computeIfAbsent(List.of(has, more.positions(), 0), key -> becomesFit(more::in))
                : becomesFit(more::in);
    }

    private boolean suffices(Mix mix) {
        return seen.computeIfAbsent(
                List.of(Mix.positions(mix.coarse()), Mix.positions(mix.fine())), key -> becomesFit(mix::in));
    }

    private boolean suffices(OffTheRadio off) {
        return becomesFit(off::in);
    }

    /** Whether there was a concession of which it could not be found out whether it is enough. */
    boolean isUndecided() {
        return inVain.get() > 0;
    }

    /** Whether a change certainly makes everything fit. */
    private boolean becomesFit(UnaryOperator<ChannelProblem> change) {
        if (tried.get() >= MOST_TRIED || inVain.get() >= MOST_IN_VAIN) {
            inVain.incrementAndGet();
            return false;
        }
        if (obstacles.stream().anyMatch(each -> Core.breaks(change.apply(each)))) {
            return false;
        }
        tried.incrementAndGet();
        ChannelProblem after = change.apply(whole);
        if (Core.breaks(after)) {
            obstacles.add(FewerFunctions.kept(whole, FunctionCore.irreducible(FewerFunctions.heeded(after))));
            return false;
        }
        boolean fits = ChannelPlanner.fits(after);
        inVain.addAndGet(fits ? 0 : 1);
        return fits;
    }
}
