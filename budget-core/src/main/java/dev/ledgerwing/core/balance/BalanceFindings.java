package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What the balance budget has to say about a build, rule by rule. */
public final class BalanceFindings {

    /** One finding for each flight case; its subject is the name of the case. */
    public static final String CG = "balance.cg";

    public static final String NO_LIMITS = "balance.no-limits";
    public static final String AFT_LIMIT = "balance.aft-limit";
    public static final String STATIC_MARGIN = "balance.static-margin";
    public static final String LATERAL = "balance.lateral";

    private BalanceFindings() {}

    /** Every finding in the order of the rules, its sentences in the units of {@code figures}. */
    public static List<Finding> of(BalanceStatement statement, Figures figures) {
        BalanceShape shape = statement.shape();
        BalanceWords words = new BalanceWords(shape, figures);
        return Stream.of(
                        new LimitsRule(shape).finding().stream(),
                        new BandRule(statement, words).findings(),
                        new AftLimitRule(shape).finding().stream(),
                        StaticMarginRule.finding(statement).stream(),
                        new LateralRule(statement, words).findings(),
                        new SurfaceRule(shape).findings(),
                        new StationRule(statement).finding().stream(),
                        new StrayRule(statement, words).findings(),
                        new BookingRule(statement, figures).findings(),
                        new InertiaRule(statement, words).finding().stream())
                .flatMap(Function.identity())
                .toList();
    }
}
