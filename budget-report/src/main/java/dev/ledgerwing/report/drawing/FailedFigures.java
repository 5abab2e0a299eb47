package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.power.failure.Clearing;
import dev.ledgerwing.core.power.failure.DarkLoad;
import dev.ledgerwing.core.power.failure.Failure;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.failure.RailChange;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is left of a supply when one thing has failed. What still carries current is held against its rating as it always is. */
final class FailedFigures extends SolvedFigures {

    private final FailureRow row;

    FailedFigures(PowerStatement power, FailureRow row) {
        super(power.network(), rail -> PowerPictures.verdict(power.network(), rail));
        this.row = row;
    }

    @Override
    String failure() {
        String lost = row.functions().isEmpty()
                ? ""
                : " Lost: "
                        + String.join(
                                ", ",
                                row.functions().stream()
                                        .map(RadioFunction::name)
                                        .toList()) + ".";
        return row.failure().words() + "." + lost;
    }

    @Override
    LoadMark load(Feed feed, int index) {
        LoadMark usual = super.load(feed, index);
        ElementAt at = new ElementAt(feed.code(), index);
        return row.overloads().stream()
                .filter(overload -> at.equals(overload.at()))
                .map(overload -> new LoadMark(
                        100 * overload.afterA() / overload.ratingA(),
                        usual.reservePercent(),
                        Verdict.BREAKS,
                        usual.rating()))
                .findFirst()
                .orElse(usual);
    }

    @Override
    State state(PowerSource source) {
        if (isOf(Failure.Kind.SOURCE_OUT, source.code())) {
            return State.FAILED;
        }
        return row.dragged().contains(source) ? State.DARK : State.LIT;
    }

    @Override
    State state(Rail rail) {
        if (isOf(Failure.Kind.RAIL_SHORTED, rail.code())) {
            return State.FAILED;
        }
        return change(rail).filter(RailChange::isDark).findAny().isPresent() ? State.DARK : State.LIT;
    }

    private Stream<RailChange> change(Rail rail) {
        return row.rails().stream().filter(change -> change.rail().equals(rail));
    }

    /** Nothing comes from where nothing is, past what is open, or to what is shorted. */
    @Override
    State state(Feed feed) {
        boolean open = IntStream.range(0, feed.elements().size()).anyMatch(index -> isOpen(feed, index));
        return open || !isLit(feed.from()) || !isLit(feed.to()) ? State.DARK : State.LIT;
    }

    private boolean isLit(String code) {
        Stream<State> sources = build().power().sources().stream()
                .filter(source -> source.code().equals(code))
                .map(this::state);
        Stream<State> rails = build().power().rails().stream()
                .filter(rail -> rail.code().equals(code))
                .map(this::state);
        return Stream.concat(sources, rails).allMatch(State.LIT::equals);
    }

    @Override
    State state(Feed feed, int index) {
        return failureOf(feed, index).isEmpty() ? state(feed) : State.FAILED;
    }

    @Override
    String failureOf(Feed feed, int index) {
        ElementAt at = new ElementAt(feed.code(), index);
        if (at.equals(row.failure().at())) {
            int count = feed.elements().get(index).count();
            return count == 1 ? "open" : "one of " + count + " open";
        }
        return isCleared(at) ? "opens" : "";
    }

    /** Of several side by side the others carry on. */
    private boolean isOpen(Feed feed, int index) {
        ElementAt at = new ElementAt(feed.code(), index);
        boolean alone = feed.elements().get(index).count() == 1;
        return isCleared(at) || (alone && at.equals(row.failure().at()));
    }

    private boolean isCleared(ElementAt at) {
        return row.clearings().stream().map(Clearing::at).anyMatch(at::equals);
    }

    private boolean isOf(Failure.Kind kind, String code) {
        return row.failure().kind() == kind && row.failure().code().equals(code);
    }

    /** What has become of it; as usual where nothing has. */
    @Override
    List<String> facts(Rail rail) {
        if (state(rail) != State.LIT) {
            return List.of();
        }
        List<String> changed = Stream.concat(
                        change(rail)
                                .map(change -> "falls to " + PowerWords.volts(change.afterV()) + " from "
                                        + PowerWords.volts(change.beforeV())),
                        tooLittle(rail))
                .toList();
        return changed.isEmpty() ? super.facts(rail) : changed;
    }

    private Stream<String> tooLittle(Rail rail) {
        List<String> names = row.loads().stream()
                .map(DarkLoad::load)
                .filter(load -> Objects.equals(load.load().rail(), rail.code()))
                .map(load -> load.line().name())
                .toList();
        return names.isEmpty() ? Stream.of() : Stream.of("too little for " + PowerWords.names(names));
    }

    @Override
    @Nullable
    Verdict verdict(Rail rail) {
        return change(rail).findAny().isPresent() ? Verdict.BREAKS : super.verdict(rail);
    }
}
