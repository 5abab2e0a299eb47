package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Rail;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the network says with nothing out of order: every element, source, rail and load held against its limits.
 *
 * @param elements feed by feed, in the order of the rails
 * @param sources in the order of the record, solar cells left out
 * @param rails from the sources outwards, unsolved ones last
 * @param loads in the order of the record, those on no rail left out
 * @param collapses one for each source that cannot give what is asked of it
 * @param isCutShort whether there were more choices of feeds than were looked at
 */
public record NetworkStatement(
        PowerNetwork network,
        List<ElementLoad> elements,
        List<SourceLoad> sources,
        List<RailState> rails,
        List<LoadState> loads,
        List<Collapse> collapses,
        boolean isCutShort) {

    public NetworkStatement {
        elements = List.copyOf(elements);
        sources = List.copyOf(sources);
        rails = List.copyOf(rails);
        loads = List.copyOf(loads);
        collapses = List.copyOf(collapses);
    }

    public static NetworkStatement of(PowerNetwork network) {
        Solutions solutions = Solutions.of(network);
        Gaps gaps = Gaps.of(network);
        List<ElementLoad> elements = new ElementLoads(network, solutions, gaps).all();
        List<LoadState> loads = new LoadStates(network, solutions, gaps).all();
        return new NetworkStatement(
                network,
                elements,
                new SourceLoads(network, solutions, gaps).all(),
                new RailStates(network, solutions, gaps, elements, loads).all(),
                loads,
                Collapse.all(network, solutions),
                solutions.isCutShort());
    }

    public Optional<RailState> rail(String code) {
        return rails.stream().filter(each -> each.rail().code().equals(code)).findFirst();
    }

    public Optional<SourceLoad> source(String code) {
        return sources.stream()
                .filter(each -> each.source().code().equals(code))
                .findFirst();
    }

    public Optional<ElementLoad> element(ElementAt at) {
        return elements.stream().filter(each -> each.at().equals(at)).findFirst();
    }

    /** Elements of one feed, in their order. */
    public List<ElementLoad> elementsOf(String feed) {
        return elements.stream().filter(each -> each.feed().code().equals(feed)).toList();
    }

    /** The rail whose feeds have an element nearest to its rating, or furthest beyond; empty when no rating is known. */
    public Optional<RailState> heaviestRail() {
        return rails.stream()
                .filter(each -> each.loadPercent() != null)
                .max(Comparator.comparingDouble(NetworkStatement::percent));
    }

    private static double percent(RailState rail) {
        Double percent = rail.loadPercent();
        return percent == null ? 0 : percent;
    }

    /** Rails that no voltage ever reaches. */
    public List<Rail> unfedRails() {
        return rails.stream()
                .filter(each -> each.isSolved() && !each.isFed())
                .map(RailState::rail)
                .toList();
    }
}
