package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.Rail;
import dev.ledgerwing.core.power.Supplies;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Supplies of one to three sources, two to six rails with one or two feeds each, and loads on all of them; the same for the same seed. Some
 * are asked for more than they can give.
 */
final class RandomSupplies {

    private final Random random;
    private final List<PowerSource> sources = new ArrayList<>();
    private final List<Rail> rails = new ArrayList<>();
    private final List<Feed> feeds = new ArrayList<>();
    private final List<PartLine> lines = new ArrayList<>();

    private RandomSupplies(long seed) {
        this.random = new Random(seed);
    }

    static Build of(long seed) {
        return new RandomSupplies(seed).build();
    }

    private Build build() {
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            sources.add(
                    random.nextInt(3) == 0
                            ? Supplies.bench("s" + i, between(9, 15))
                            : Supplies.pack("s" + i, 3 + random.nextInt(2), between(0, 15)));
        }
        int count = 2 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            addRail("r" + i);
        }
        return Supplies.build(sources, rails, feeds, lines.toArray(PartLine[]::new));
    }

    private void addRail(String code) {
        rails.add(Supplies.rail(code, between(4, 12)));
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            int from = random.nextInt(sources.size() + rails.size() - 1);
            String node = from < sources.size()
                    ? sources.get(from).code()
                    : rails.get(from - sources.size()).code();
            if (feeds.stream().noneMatch(feed -> feed.code().equals(node + "-" + code))) {
                feeds.add(Supplies.feed(node, code, elements()));
            }
        }
        for (int i = 0; i < random.nextInt(3); i++) {
            lines.add(Supplies.parts("L" + lines.size(), 1 + random.nextInt(3), load(code)));
        }
    }

    private FeedElement[] elements() {
        List<FeedElement> elements = new ArrayList<>();
        for (int i = 0; i < random.nextInt(4); i++) {
            elements.add(
                    switch (random.nextInt(6)) {
                        case 0 -> Supplies.diode(between(0, 0.6));
                        case 1 -> Supplies.linear(between(3, 6), between(0, 1));
                        case 2 -> Supplies.switching(between(3, 14), between(50, 100));
                        default -> Supplies.resistance(random.nextInt(4) == 0 ? 0 : between(0, 200));
                    });
        }
        return elements.toArray(FeedElement[]::new);
    }

    private ElectricalLoad load(String rail) {
        double typicalA = random.nextInt(8) == 0 ? between(0, 40) : between(0, 3);
        double peakA = typicalA + between(0, 2);
        return random.nextBoolean()
                ? Supplies.constantCurrent(rail, typicalA, peakA)
                : Supplies.constantPower(rail, typicalA, peakA);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
