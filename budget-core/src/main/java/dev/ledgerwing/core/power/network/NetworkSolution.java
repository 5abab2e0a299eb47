package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.Regulator;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Voltages and currents of a network, with one feed carrying each rail. */
public final class NetworkSolution {

    private final NetworkCase situation;
    private final Carried carried;
    private final Drawn drawn;
    private final ForestSolver solver;

    NetworkSolution(NetworkCase situation, Carried carried, Drawn drawn, ForestSolver solver) {
        this.situation = situation;
        this.carried = carried;
        this.drawn = drawn;
        this.solver = solver;
    }

    public Occasion occasion() {
        return situation.occasion();
    }

    /** Whether there were more choices of feeds than were looked at, so that it need not be the highest. */
    public boolean isCutShort() {
        return situation.isCutShort();
    }

    public Charge charge() {
        return drawn.charge();
    }

    public LoadLevel level() {
        return drawn.level();
    }

    private PowerNetwork network() {
        return situation.network();
    }

    /** The feed that carries a rail; empty when it is dark. */
    public Optional<Feed> carrier(String rail) {
        return Optional.ofNullable(carried.choice().carrier(rail)).map(Way::feed);
    }

    /** Voltage at the terminals of a source, or at a rail; 0 when it is dark or its supply has collapsed. */
    public double volts(String node) {
        int at = carried.node(node);
        return at < 0 ? 0 : solver.volts(at);
    }

    /** Current out of a source, or into a rail. */
    public double amperes(String node) {
        int at = carried.node(node);
        return at < 0 ? 0 : solver.amperes(at);
    }

    public boolean isDark(String node) {
        return volts(node) <= 0;
    }

    /** Sources that cannot give what is asked of them: no voltage exists at which everything behind them could run. */
    public List<PowerSource> collapsed() {
        return network().sources().stream()
                .filter(source -> hasCollapsed(source.code()))
                .toList();
    }

    /** Whether it hangs on a source that cannot give what is asked of it. */
    public boolean hasCollapsed(String node) {
        int at = carried.node(node);
        return at >= 0 && solver.hasCollapsed(at);
    }

    /** Whether a feed carries its rail in this solution, and voltage arrives there. */
    public boolean carries(Feed feed) {
        return carrier(feed.to()).filter(feed::equals).isPresent() && !isDark(feed.to());
    }

    /** How each element of a feed stands; empty when it carries nothing. */
    public List<ElementFlow> flows(Feed feed) {
        if (!carries(feed)) {
            return List.of();
        }
        Way way = Objects.requireNonNull(carried.choice().carrier(feed.to()));
        int regulators = (int)
                way.steps().stream().filter(step -> step.conversion() != null).count();
        double[] outA = regulatorOutputs(feed, way, regulators);
        List<ElementFlow> flows = new ArrayList<>();
        double volts = volts(feed.from());
        double current = inputAmperes(way, feed);
        int passed = 0;
        for (PlacedElement each : way.elements()) {
            Conversion conversion = each.conversion();
            double inA = current;
            double inV = volts;
            if (conversion != null) {
                current = outA[passed++];
                volts = conversion.outV(volts);
            }
            volts -= (drawn.losesInDiodes() ? each.forwardV() : 0) + each.ohm() * current;
            flows.add(new ElementFlow(each, inV, inA, volts, current));
        }
        return flows;
    }

    /** Current on the far side of every regulator of a way, in their order. */
    private double[] regulatorOutputs(Feed feed, Way way, int regulators) {
        double[] outA = new double[regulators];
        int node = carried.node(feed.to());
        int left = regulators;
        for (int i = way.steps().size() - 1; i >= 0; i--, node--) {
            if (way.steps().get(i).conversion() != null) {
                outA[--left] = solver.amperes(node);
            }
        }
        return outA;
    }

    /** What a feed takes from where it begins. */
    private double inputAmperes(Way way, Feed feed) {
        int first = carried.node(feed.to()) - way.steps().size() + 1;
        Conversion conversion = way.steps().get(0).conversion();
        double behind = solver.amperes(first);
        return conversion == null ? behind : conversion.inA(volts(feed.from()), behind);
    }

    /** What a feed takes from where it begins, in amperes; 0 when it carries nothing. */
    public double inputAmperes(Feed feed) {
        Way way = carried.choice().carrier(feed.to());
        return way == null || !carries(feed) ? 0 : inputAmperes(way, feed);
    }

    /** How every load stands that hangs on a rail. */
    public List<LoadFlow> loads() {
        List<LoadFlow> flows = new ArrayList<>();
        Set<String> starved = starvedRails();
        List<LoadModel> models = network().loadModels();
        for (int i = 0; i < models.size(); i++) {
            String rail = models.get(i).load().load().rail();
            if (rail != null) {
                flows.add(flow(models.get(i), drawn.demandA()[i], volts(rail), starved.contains(rail)));
            }
        }
        return flows;
    }

    private LoadFlow flow(LoadModel model, double demandA, double volts, boolean isStarved) {
        boolean runs = demandA > 0 || occasion().duty(model.load()) > 0;
        if (volts <= 0) {
            return new LoadFlow(model.load(), runs, 0, 0, false);
        }
        double current = model.amperes(demandA, volts);
        return new LoadFlow(model.load(), runs, current, model.atLoadV(current, volts), isStarved);
    }

    /** Rails behind a regulator that gets less than it needs to work at all: nobody knows what it gives then. */
    public Set<String> starvedRails() {
        Set<String> starved = new HashSet<>();
        for (Rail rail : network().ordered()) {
            Way way = carried.choice().carrier(rail.code());
            if (way != null && (starved.contains(way.feed().from()) || isStarved(way))) {
                starved.add(rail.code());
            }
        }
        return starved;
    }

    private boolean isStarved(Way way) {
        return way.hasRegulator() && flows(way.feed()).stream().anyMatch(NetworkSolution::isBelowMinimum);
    }

    private static boolean isBelowMinimum(ElementFlow flow) {
        Regulator regulator = flow.element().regulator();
        @Nullable Double minInputV = regulator == null ? null : regulator.minInputV();
        return minInputV != null && flow.inV() < minInputV;
    }
}
