package dev.ledgerwing.core.power.charging;

import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.battery.PackFigures;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A pack and all solar cells that charge it; each array is taken as giving everything to this pack.
 *
 * @param ways at least one, all of them open
 */
public record PackCharge(PowerSource battery, List<ChargeWay> ways) {

    public PackCharge {
        ways = List.copyOf(ways);
    }

    public PackFigures pack() {
        return PackFigures.of(Objects.requireNonNull(battery.pack()));
    }

    public boolean hasCutOff() {
        return pack().pack().automaticCutOff();
    }

    /** The most that all of them together push into the pack; null = not known. */
    public @Nullable Double worstA() {
        double sumA = 0;
        for (ChargeWay way : ways) {
            Double worstA = way.worstA();
            if (worstA == null) {
                return null;
            }
            sumA += worstA;
        }
        return sumA;
    }
}
