package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.power.failure.FailureRow;
import dev.ledgerwing.core.power.network.ElementLoad;
import dev.ledgerwing.core.power.network.LoadState;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.power.solar.DayBalance;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.function.Function;
import java.util.stream.Stream;

/** The drawings of a supply, ready to stand in a page. */
public final class PowerPictures {

    private PowerPictures() {}

    /** The way of the current as it is recorded, nothing solved: also of a supply that is not finished. */
    public static Picture feeds(Build build) {
        return picture(new PowerViews(build, new FeedFigures(build)).view());
    }

    /** The way of the current with everything on it held against its rating. */
    public static Picture feeds(PowerStatement power) {
        return picture(new PowerViews(power.build(), figures(power)).view());
    }

    /** The same with one thing out of order: it is crossed out, and what nothing reaches any more is dark. */
    public static Picture feeds(PowerStatement power, FailureRow failure) {
        return picture(new PowerViews(power.build(), new FailedFigures(power, failure)).view());
    }

    private static Picture picture(PowerView view) {
        return new Picture(FeedDiagram.svg(view, Layout.WIDE), FeedDiagram.svg(view, Layout.NARROW));
    }

    static SolvedFigures figures(PowerStatement power) {
        return new SolvedFigures(power.network(), rail -> verdict(power.network(), rail));
    }

    /** The worst of what hangs on a rail and of what leads to it. */
    public static Verdict verdict(NetworkStatement network, Rail rail) {
        RailState state = network.rail(rail.code()).orElse(null);
        if (state == null || !state.isSolved()) {
            return Verdict.UNKNOWN;
        }
        if (!state.isFed()) {
            return state.loads().isEmpty() ? Verdict.TIGHT : Verdict.BREAKS;
        }
        Stream<Verdict> loads = state.loads().stream().map(LoadState::verdict);
        Stream<Verdict> elements = state.feeds().stream()
                .flatMap(feed -> network.elementsOf(feed.code()).stream())
                .map(ElementLoad::verdict);
        Stream<Verdict> own = state.isOutsideOwnLimits() ? Stream.of(Verdict.TIGHT) : Stream.empty();
        return Verdict.worst(
                Stream.of(loads, elements, own).flatMap(Function.identity()).toList());
    }

    /** Energy by phase, stacked by rail. */
    public static Picture energy(PowerStatement power) {
        EnergyView view =
                new EnergyViews(power.energy()).view(power.build().airframe().name());
        return new Picture(EnergyChart.svg(view, Layout.WIDE), EnergyChart.svg(view, Layout.NARROW));
    }

    /** Harvest, consumption and charge through the day of a statement. */
    public static Picture day(PowerStatement power, DayBalance balance) {
        DayView view = new DayViews(balance).view(power.build().airframe().name());
        return new Picture(DayChart.svg(view, Layout.WIDE), DayChart.svg(view, Layout.NARROW));
    }
}
