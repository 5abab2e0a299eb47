package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Sources, feeds, rails and loads of a build as a network that can be solved, whole or with something out of order.
 *
 * <p>No sharing is assumed: a rail with several feeds is carried by one of them at a time, and every choice is looked at.
 */
public final class PowerNetwork {

    private final Build build;
    private final Topology topology;
    /** Those that are solved, each after all that it is fed from. */
    private final List<Rail> ordered;
    /** Their codes, in the order in which choices are compared. */
    private final List<String> compared;
    /** All of them, those that are not solved at the end. */
    private final List<Rail> rails;

    private final Map<String, List<Feed>> feedsInto;
    private final List<Occasion> occasions;
    private final List<SourceModel> sources;
    /** In the order of {@link #loads()}. */
    private final List<LoadModel> loadModels;
    /** By the code of the feed, in the order of the record. */
    private final Map<String, Way> ways;
    /** By the code of a source or rail. */
    private final Map<String, Double> highestV;

    /** Of each occasion, in their order. */
    private final List<Map<LoadLevel, double[]>> demands;

    /** Where each load stands, ordered by the ids of their lines: sums do not depend on the order of the record then. */
    private final int[] summingOrder;

    private PowerNetwork(Build build) {
        this.build = build;
        this.topology = Topology.of(build);
        this.ordered = topology.ordered();
        this.compared = topology.compared();
        this.rails = Stream.of(ordered, topology.looped(), topology.behindLoops())
                .flatMap(List::stream)
                .toList();
        this.feedsInto = topology.feeds().stream().collect(Collectors.groupingBy(Feed::to));
        this.occasions = Occasion.of(build);
        this.sources = topology.sources().stream().map(SourceModel::of).toList();
        this.loadModels = topology.loads().stream()
                .map(load -> LoadModel.of(load, build.power().rules().wireCInForce()))
                .toList();
        this.ways = new LinkedHashMap<>();
        this.highestV = new HashMap<>();
        this.demands = occasions.stream().map(this::demands).toList();
        this.summingOrder = summingOrder(topology.loads());
        findWays();
    }

    public static PowerNetwork of(Build build) {
        return new PowerNetwork(build);
    }

    private void findWays() {
        sources.stream()
                .filter(SourceModel::gives)
                .forEach(each -> highestV.put(each.source().code(), each.openV(Charge.FULL)));
        double conductorC = build.power().rules().wireCInForce();
        for (Rail rail : rails()) {
            for (Feed feed : feedsInto(rail.code())) {
                double fromV = highestV.getOrDefault(feed.from(), 0.0);
                Way way = Way.of(feed, conductorC, fromV);
                ways.put(feed.code(), way);
                highestV.merge(rail.code(), fromV == 0 ? 0 : Math.max(0, way.idleOutV(fromV)), Math::max);
            }
        }
    }

    private Map<LoadLevel, double[]> demands(Occasion occasion) {
        Map<LoadLevel, double[]> byLevel = new EnumMap<>(LoadLevel.class);
        for (LoadLevel level : LoadLevel.values()) {
            byLevel.put(level, Demand.of(occasion, level, topology.loads()));
        }
        return byLevel;
    }

    private static int[] summingOrder(List<RailLoad> loads) {
        return IntStream.range(0, loads.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> loads.get(i).line().id())
                        .thenComparing(i -> loads.get(i).index()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    public Build build() {
        return build;
    }

    /** Nothing recorded: neither sources nor rails nor feeds. */
    public boolean isBlank() {
        return build.power().sources().isEmpty() && rails().isEmpty() && feeds().isEmpty();
    }

    /** Every phase; one occasion for all the time where the record has no phases. */
    public List<Occasion> occasions() {
        return occasions;
    }

    /** In the order of the record. */
    public List<PowerSource> sources() {
        return topology.sources();
    }

    /** From the sources outwards; then those in loops, which are not solved, and those behind them. */
    public List<Rail> rails() {
        return rails;
    }

    /** Rails that are fed by themselves round about. */
    public List<Rail> loopedRails() {
        return topology.looped();
    }

    /** Whether a rail takes no part in the solution, because it is in a loop or behind one. */
    public boolean isUnsolved(String rail) {
        return !compared.contains(rail);
    }

    /** In the order of the record. */
    public List<Feed> feeds() {
        return topology.feeds();
    }

    /** In the order of the record. */
    public List<Feed> feedsInto(String rail) {
        return feedsInto.getOrDefault(rail, List.of());
    }

    /** In the order of the record. */
    public List<Feed> feedsFrom(String node) {
        return feeds().stream().filter(feed -> feed.from().equals(node)).toList();
    }

    public Optional<Feed> feed(String code) {
        return feeds().stream().filter(feed -> feed.code().equals(code)).findFirst();
    }

    public Optional<Rail> rail(String code) {
        return rails().stream().filter(rail -> rail.code().equals(code)).findFirst();
    }

    public Optional<PowerSource> source(String code) {
        return sources().stream().filter(source -> source.code().equals(code)).findFirst();
    }

    /** Every rail that current from a source or rail may come to. */
    public Set<String> railsReachedFrom(String node) {
        return Topology.reached(node, feeds());
    }

    /** Of every line, in the order of the record; also those that hang on no rail. */
    public List<RailLoad> loads() {
        return topology.loads();
    }

    public List<RailLoad> loadsOn(String rail) {
        return loads().stream().filter(load -> rail.equals(load.load().rail())).toList();
    }

    /** The highest voltage that ever stands at a source or rail: all packs full, nothing drawn. 0 where none arrives. */
    public double highestV(String node) {
        return highestV.getOrDefault(node, 0.0);
    }

    /** The network as it is on one occasion. */
    public NetworkCase on(Occasion occasion) {
        return on(occasion, Outage.NONE);
    }

    /** The network as it is on one occasion with something out of order. */
    public NetworkCase on(Occasion occasion, Outage outage) {
        return NetworkCase.of(this, occasion, outage);
    }

    List<Rail> ordered() {
        return ordered;
    }

    List<String> compared() {
        return compared;
    }

    /** How many choices of feeds are looked at; of those that lie in one feed, most failures come to the same. */
    int mostChoices() {
        int failures = sources.size() + 2 * feeds().size() + rails.size();
        return Choice.most(occasions.size(), failures, sources.size() + feeds().size() + loadModels.size());
    }

    List<SourceModel> models() {
        return sources;
    }

    Optional<Way> way(String feed) {
        return Optional.ofNullable(ways.get(feed));
    }

    /** Amperes of each of {@link #loads()} at nominal voltage. */
    double[] demand(Occasion occasion, LoadLevel level) {
        return demands.get(occasions.indexOf(occasion)).getOrDefault(level, new double[0]);
    }

    List<LoadModel> loadModels() {
        return loadModels;
    }

    int[] summingOrder() {
        return summingOrder;
    }

    /** The elements of a feed, in their order, as they are placed. */
    List<PlacedElement> placed(Feed feed) {
        return way(feed.code()).map(Way::elements).orElse(List.of());
    }
}
