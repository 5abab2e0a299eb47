package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.balance.Axis;
import dev.ledgerwing.core.quantity.Mass;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the scales say of what was compared: net of tare, what does not belong taken out.
 *
 * @param joint mass and first moments along the axes that the scales tell, with their covariance
 * @param notKnown for each of the other axes, why the scales cannot tell
 * @param heightFromLedger whether x rests on the height that the ledger gives, since the airframe did not stand level
 * @param shiftPerDegreeMm how far x would be off with each degree that the airframe stood off level without anybody noticing: V tan(1
 *     degree), V the height of the CG above the supports; null = not known
 */
public record ScalesAnswer(
        Mass mass,
        JointMass joint,
        Map<Axis, String> notKnown,
        boolean heightFromLedger,
        @Nullable Double shiftPerDegreeMm) {

    public ScalesAnswer {
        notKnown =
                Collections.unmodifiableMap(notKnown.isEmpty() ? new EnumMap<>(Axis.class) : new EnumMap<>(notKnown));
    }
}
