package dev.ledgerwing.core.review;

import dev.ledgerwing.core.balance.BalanceBand;
import dev.ledgerwing.core.balance.BalanceShape;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.CaseBalance;
import dev.ledgerwing.core.balance.MassState;
import dev.ledgerwing.core.balance.NeutralPoint;
import dev.ledgerwing.core.balance.Planform;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The figures of the balance budget under their names. A CG is that of what is placed; {@code balance.unplacedParts} above 0 means that
 * something aboard has no mass or no station and is not in it.
 */
final class BalanceFigures {

    private final Map<String, Double> figures = new LinkedHashMap<>();
    private final BalanceStatement statement;

    private BalanceFigures(BalanceStatement statement) {
        this.statement = statement;
    }

    static Map<String, Double> of(BalanceStatement statement) {
        BalanceFigures balance = new BalanceFigures(statement);
        balance.loadCase("balance.", statement.design());
        balance.shape(statement.shape());
        statement
                .cases()
                .forEach(each -> balance.loadCase("balance." + each.loadCase().code() + ".", each));
        return balance.figures;
    }

    private void loadCase(String prefix, CaseBalance aboard) {
        cg(prefix + "cg", aboard, MassState.BASIC);
        cg(prefix + "predictedCg", aboard, MassState.PREDICTED);
        aboard.uncertainty(MassState.BASIC).ifPresent(u -> put(prefix + "standardUncertaintyMm", u.xMm()));
        put(prefix + "unplacedParts", (double)
                (aboard.withoutMass().size() + aboard.withoutStation().size()));
    }

    private void cg(String prefix, CaseBalance aboard, MassState state) {
        aboard.cg(state).ifPresent(cg -> {
            put(prefix + "XMm", cg.xMm());
            put(prefix + "YMm", cg.yMm());
            put(prefix + "ZMm", cg.zMm());
            put(prefix + "PercentMac", statement.shape().percentMac(cg.xMm()));
        });
    }

    private void shape(BalanceShape shape) {
        Planform wing = shape.wing();
        if (wing != null) {
            put("balance.macMm", wing.macMm());
            put("balance.leMacXMm", wing.macXMm());
            put("balance.wingAreaM2", wing.areaM2());
        }
        BalanceBand band = shape.band();
        if (band != null) {
            put("balance.forwardLimitXMm", band.forwardXMm());
            put("balance.aftLimitXMm", band.aftXMm());
            put("balance.forwardLimitPercentMac", shape.percentMac(band.forwardXMm()));
            put("balance.aftLimitPercentMac", shape.percentMac(band.aftXMm()));
        }
        NeutralPoint neutralPoint = shape.neutralPoint();
        if (neutralPoint != null) {
            put("balance.neutralPointPercentMac", neutralPoint.percentMac());
            statement
                    .design()
                    .cg(MassState.BASIC)
                    .ifPresent(cg -> put("balance.staticMarginPercent", neutralPoint.staticMarginPercent(cg.xMm())));
        }
    }

    private void put(String name, @Nullable Double value) {
        if (value != null) {
            figures.put(name, value);
        }
    }
}
