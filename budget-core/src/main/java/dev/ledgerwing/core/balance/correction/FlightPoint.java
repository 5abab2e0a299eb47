package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.Cg;
import dev.ledgerwing.core.balance.MassState;
import java.util.List;
import java.util.stream.Stream;

/**
 * One flight case at one mass, along the fuselage: what it weighs and where it balances.
 *
 * @param loadCase code of the load case, {@code name} what people call it
 * @param xMm the CG aft of the datum
 * @param uMm its standard uncertainty
 */
public record FlightPoint(String loadCase, String name, MassState state, double massG, double xMm, double uMm) {

    /** Every flight case at basic and at predicted mass, in the record's order; a case that weighs nothing has no CG and is left out. */
    static List<FlightPoint> of(BalanceStatement statement) {
        return statement.flight().stream()
                .flatMap(each -> Stream.of(MassState.values()).flatMap(state -> of(each, state)))
                .toList();
    }

    private static Stream<FlightPoint> of(CaseBalance aboard, MassState state) {
        return aboard.cg(state).stream().map(cg -> of(aboard, state, cg));
    }

    private static FlightPoint of(CaseBalance aboard, MassState state, Cg cg) {
        double uMm = aboard.uncertaintyXMm(state).orElseThrow();
        double massG = aboard.sum(state).mass().grams();
        return new FlightPoint(aboard.loadCase().code(), aboard.loadCase().name(), state, massG, cg.xMm(), uMm);
    }

    double momentGMm() {
        return massG * xMm;
    }

    boolean isSameCase(FlightPoint other) {
        return loadCase.equals(other.loadCase) && state == other.state;
    }

    /** The same case with {@code addedG} more aboard and {@code addedGMm} more first moment. */
    FlightPoint with(double addedG, double addedGMm) {
        double mass = massG + addedG;
        return new FlightPoint(loadCase, name, state, mass, (momentGMm() + addedGMm) / mass, uMm);
    }
}
