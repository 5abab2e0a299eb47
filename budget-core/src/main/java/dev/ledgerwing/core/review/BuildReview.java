package dev.ledgerwing.core.review;

import dev.ledgerwing.core.balance.BalanceFindings;
import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.balance.correction.PlacementFindings;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.mass.MassFindings;
import dev.ledgerwing.core.mass.MassForecast;
import dev.ledgerwing.core.mass.MassStatement;
import dev.ledgerwing.core.outputs.OutputFindings;
import dev.ledgerwing.core.outputs.OutputStatement;
import dev.ledgerwing.core.power.PowerFindings;
import dev.ledgerwing.core.power.PowerStatement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.radio.RadioFindings;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What every budget says about one build.
 *
 * @param units the units its sentences are written in; figures and verdicts do not depend on them
 * @param figures flat map from name, with its unit, to value, in a fixed order; what is not known is left out
 * @param findings worst first, then in the order of the rules
 */
public record BuildReview(
        MassStatement mass,
        MassForecast massForecast,
        BalanceStatement balance,
        PowerStatement power,
        RadioStatement radio,
        OutputStatement outputs,
        Figures units,
        Map<String, Double> figures,
        List<Finding> findings) {

    /** Raised whenever a figure, a verdict or a name changes its meaning, so that stored figures are made anew. */
    public static final int VERSION = 4;

    private static final Comparator<Finding> WORST_FIRST =
            Comparator.comparing(Finding::verdict).reversed();

    public BuildReview {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        findings = findings.stream().sorted(WORST_FIRST).toList();
    }

    public static BuildReview of(Build build) {
        return of(build, Figures.METRIC);
    }

    /** The same review, its sentences in a member's own units. */
    public static BuildReview of(Build build, Figures units) {
        MassStatement mass = MassStatement.of(build);
        MassForecast forecast = MassForecast.of(mass);
        BalanceStatement balance = BalanceStatement.of(mass);
        PowerStatement power = PowerStatement.of(build);
        RadioStatement radio = RadioStatement.of(build);
        OutputStatement outputs = OutputStatement.of(build);
        Map<String, Double> figures = new LinkedHashMap<>(MassFigures.of(forecast));
        figures.putAll(BalanceFigures.of(balance));
        figures.putAll(PowerFigures.of(power));
        figures.putAll(RadioFigures.of(radio));
        figures.putAll(OutputFigures.of(outputs));
        List<Finding> findings = new ArrayList<>(MassFindings.of(forecast, units));
        findings.addAll(BalanceFindings.of(balance, units));
        findings.addAll(PlacementFindings.of(build, units));
        findings.addAll(PowerFindings.of(power, units));
        findings.addAll(RadioFindings.of(radio, units));
        findings.addAll(OutputFindings.of(outputs));
        return new BuildReview(mass, forecast, balance, power, radio, outputs, units, figures, findings);
    }

    public Build build() {
        return mass.build();
    }

    /** The worst finding of each budget; a budget in which nothing was checked is not known. */
    public Map<Budget, Verdict> verdicts() {
        Map<Budget, Verdict> verdicts = new EnumMap<>(Budget.class);
        for (Budget budget : Budget.values()) {
            verdicts.put(
                    budget,
                    Verdict.worst(
                            findings(budget).stream().map(Finding::verdict).toList()));
        }
        return Collections.unmodifiableMap(verdicts);
    }

    public Verdict verdict(Budget budget) {
        return verdicts().getOrDefault(budget, Verdict.UNKNOWN);
    }

    /** The worst of all budgets. */
    public Verdict verdict() {
        return Verdict.worst(verdicts().values());
    }

    public List<Finding> findings(Budget budget) {
        return findings.stream().filter(finding -> finding.budget() == budget).toList();
    }

    /** The finding of a rule that speaks once: {@code mass.target}. */
    public Optional<Finding> finding(String code) {
        return findings.stream().filter(finding -> finding.code().equals(code)).findFirst();
    }

    /** The finding of a rule about one subject: {@code balance.cg} of a load case by its name. */
    public Optional<Finding> finding(String code, String subject) {
        return findings.stream()
                .filter(finding ->
                        finding.code().equals(code) && finding.subject().equals(subject))
                .findFirst();
    }

    /** The findings about one part line. */
    public List<Finding> findingsOfLine(String line) {
        return findings.stream().filter(finding -> line.equals(finding.line())).toList();
    }
}
