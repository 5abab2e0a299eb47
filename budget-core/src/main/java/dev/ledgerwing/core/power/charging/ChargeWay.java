package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.Pack;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.build.SolarArray;
import dev.ledgerwing.core.power.battery.PackFigures;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The way from solar cells to a pack.
 *
 * @param cells source of kind SOLAR, and {@code battery} one of kind BATTERY
 * @param feeds the feeds of the way in their order, with or against their arrow
 * @param inTheWay the diode, regulator or motor controller that lets nothing through, or nothing that could be reckoned; null = none
 */
public record ChargeWay(
        PowerSource cells,
        PowerSource battery,
        List<Feed> feeds,
        @Nullable FeedElement inTheWay) {

    public ChargeWay {
        feeds = List.copyOf(feeds);
    }

    public boolean isOpen() {
        return inTheWay == null;
    }

    public SolarArray array() {
        return Objects.requireNonNull(cells.array());
    }

    public Pack pack() {
        return Objects.requireNonNull(battery.pack());
    }

    boolean isDirect() {
        return array().connection() == SolarArray.Connection.DIRECT;
    }

    double fullV() {
        return PackFigures.of(pack()).fullV();
    }

    /** Lost in all diodes on the way; null = that of one of them is not known. */
    @Nullable
    Double diodesV() {
        double sumV = 0;
        for (Feed feed : feeds) {
            for (FeedElement element : feed.elements()) {
                Double forwardV = element.forwardV();
                if (element.kind() == FeedElement.Kind.DIODE && forwardV == null) {
                    return null;
                }
                sumV += forwardV == null ? 0 : forwardV;
            }
        }
        return sumV;
    }

    /** What arrives in full sun at nominal voltage of the pack, with everything else off; null = not known. */
    public @Nullable Double nominalA() {
        return ampereAt(PackFigures.of(pack()).nominalV());
    }

    /** The most that arrives in full sun, with everything else off: into the empty pack; null = not known. */
    public @Nullable Double worstA() {
        return ampereAt(PackFigures.of(pack()).emptyV());
    }

    /** Straight on, the cells give about their short-circuit current at any voltage they reach; a tracker keeps the power. */
    private @Nullable Double ampereAt(double packV) {
        if (isDirect()) {
            return array().shortCircuitA();
        }
        Double powerW = array().maxPowerW();
        Double efficiencyPercent = array().trackerEfficiencyPercent();
        return powerW == null || efficiencyPercent == null ? null : powerW * efficiencyPercent / 100 / packV;
    }

    /** What must be entered before the current is known, in words. */
    List<String> missing() {
        if (isDirect()) {
            return array().shortCircuitA() == null ? List.of("the short-circuit current") : List.of();
        }
        return Missing.of()
                .when(array().maxPowerW(), "the greatest power")
                .when(array().trackerEfficiencyPercent(), "the efficiency of the tracker")
                .words();
    }
}
