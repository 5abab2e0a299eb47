package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.report.drawing.PowerView.ElementMark;
import dev.ledgerwing.report.drawing.PowerView.FeedMark;
import dev.ledgerwing.report.drawing.PowerView.RailMark;
import dev.ledgerwing.report.drawing.PowerView.SourceMark;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Makes a {@link PowerView} of the record of a build. */
final class PowerViews {

    private final Build build;
    private final FeedFigures figures;

    PowerViews(Build build, FeedFigures figures) {
        this.build = build;
        this.figures = figures;
    }

    PowerView view() {
        return new PowerView(
                build.airframe().name(),
                build.power().sources().stream().map(this::source).toList(),
                build.power().rails().stream().map(this::rail).toList(),
                build.power().feeds().stream().map(this::feed).toList(),
                figures.failure(),
                notes());
    }

    private SourceMark source(PowerSource source) {
        return new SourceMark(
                source.code(),
                source.name(),
                source.kind(),
                facts(source),
                figures.load(source),
                figures.state(source));
    }

    private static List<String> facts(PowerSource source) {
        Pack pack = source.pack();
        SolarArray array = source.array();
        if (pack != null) {
            Double cell = pack.cellCapacityMah();
            String capacity = cell == null ? "capacity not known" : whole(cell * pack.parallelCells(), "mAh");
            return List.of(pack.seriesCells() + "S" + pack.parallelCells() + "P, " + capacity);
        }
        return array == null
                ? List.of(known(source.outputV(), "V", "voltage") + ", " + known(source.ratingA(), "A", "rating"))
                : List.of(known(array.maxPowerW(), "W", "power"));
    }

    private RailMark rail(Rail rail) {
        List<String> facts = new ArrayList<>(List.of(known(rail.nominalV(), "V", "voltage") + allowed(rail)));
        facts.addAll(figures.facts(rail));
        if (rail.redundant()) {
            facts.add("each feed alone carries it");
        }
        if (build.power().feeds().stream().noneMatch(feed -> feed.to().equals(rail.code()))) {
            facts.add("no feed leads here");
        }
        return new RailMark(
                rail.code(), rail.name(), facts, figures.verdict(rail), loads(rail.code()), figures.state(rail));
    }

    private String allowed(Rail rail) {
        String limits = RailLimits.of(build, rail).words();
        return limits.isEmpty() ? "" : ", allowed " + limits;
    }

    private List<String> loads(String rail) {
        return build.lines().stream()
                .flatMap(line -> line.electrical().stream()
                        .filter(load -> rail.equals(load.rail()))
                        .map(load -> load(line, load)))
                .toList();
    }

    private static String load(PartLine line, ElectricalLoad load) {
        Double typical = load.typicalA();
        String each = line.quantity() == 1 ? "" : line.quantity() + " × ";
        return each + (typical == null ? "current not known" : PowerWords.amperes(typical)) + " " + line.name();
    }

    private FeedMark feed(Feed feed) {
        List<ElementMark> elements = IntStream.range(0, feed.elements().size())
                .mapToObj(index -> element(feed, index))
                .toList();
        return new FeedMark(feed.code(), feed.name(), feed.from(), feed.to(), elements, figures.state(feed));
    }

    private ElementMark element(Feed feed, int index) {
        FeedElement element = feed.elements().get(index);
        String count = element.count() == 1 ? "" : " × " + element.count();
        return new ElementMark(
                element.name() + count,
                element.kind(),
                figures.load(feed, index),
                figures.state(feed, index),
                figures.failureOf(feed, index));
    }

    private List<String> notes() {
        List<String> loose = build.lines().stream()
                .filter(line -> line.electrical().stream().anyMatch(load -> load.rail() == null))
                .map(PartLine::name)
                .toList();
        return loose.isEmpty() ? List.of() : List.of("On no rail yet: " + String.join(", ", loose) + ".");
    }

    private static String known(@Nullable Double value, String unit, String what) {
        return value == null ? what + " not known" : amount(value, unit);
    }

    static String amount(double value, String unit) {
        return Figures.number(value, 2) + "\u2009" + unit;
    }

    private static String whole(double value, String unit) {
        return Figures.number(value, 0) + "\u2009" + unit;
    }
}
