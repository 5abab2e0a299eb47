package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.network.ElementAt;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.power.network.RailState;
import dev.ledgerwing.core.power.network.SourceLoad;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is solved of a supply with nothing out of order. */
class SolvedFigures extends FeedFigures {

    private final NetworkStatement network;
    private final Function<Rail, Verdict> railVerdict;

    SolvedFigures(NetworkStatement network, Function<Rail, Verdict> railVerdict) {
        super(network.network().build());
        this.network = network;
        this.railVerdict = railVerdict;
    }

    @Override
    LoadMark load(PowerSource source) {
        return network.source(source.code())
                .filter(SourceLoad::isUsed)
                .map(load -> new LoadMark(
                        load.loadPercent(), load.reservePercent(), load.verdict(), amperes(load.ratingA())))
                .orElseGet(() -> super.load(source));
    }

    @Override
    LoadMark load(Feed feed, int index) {
        FeedElement element = feed.elements().get(index);
        return network.element(new ElementAt(feed.code(), index))
                .map(load -> new LoadMark(
                        load.loadPercent(),
                        load.reservePercent(),
                        load.verdict(),
                        load.rating().continuousA() == null
                                ? rating(element)
                                : amperes(load.rating().continuousA())))
                .orElseGet(() -> super.load(feed, index));
    }

    private static String amperes(@Nullable Double amperes) {
        return amperes == null ? "" : PowerWords.amperes(amperes);
    }

    @Override
    @Nullable
    Verdict verdict(Rail rail) {
        return railVerdict.apply(rail);
    }

    @Override
    List<String> facts(Rail rail) {
        return network.rail(rail.code()).map(SolvedFigures::facts).orElse(List.of());
    }

    private static List<String> facts(RailState state) {
        List<String> facts = new ArrayList<>();
        Double lowest = state.lowestV();
        Double highest = state.highestV();
        if (!state.isSolved() || lowest == null || highest == null) {
            return List.of("voltage cannot be solved");
        }
        facts.add(state.isFed() ? "gets " + range(lowest, highest) : "no voltage arrives");
        String least = state.isWhole() ? "" : "at least ";
        facts.add(least + PowerWords.amperes(state.typicalA()) + ", peak " + PowerWords.amperes(state.peakA()));
        return facts;
    }

    /** {@code 4.91 to 5.08 V}; one figure where both are written alike. */
    static String range(double lowest, double highest) {
        String low = Figures.number(lowest, 2);
        return low.equals(Figures.number(highest, 2))
                ? PowerWords.volts(lowest)
                : low + " to " + PowerWords.volts(highest);
    }
}
