package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Bay;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.KeepApart;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.forms.PartChoice;
import java.util.List;
import java.util.stream.Collectors;

/** Bays and rules to keep apart, ready to be shown. */
record PlacingView(List<BayRow> bays, List<RuleRow> rules) {

    /** @param holds the names of its parts; empty = none yet */
    record BayRow(String code, String name, String range, String holds) {}

    record RuleRow(String id, String name, String atLeast) {}

    static PlacingView of(Build build, Figures figures) {
        return new PlacingView(
                build.bays().stream().map(bay -> row(bay, build, figures)).toList(),
                build.keepApart().stream()
                        .map(rule -> row(rule, build, figures))
                        .toList());
    }

    private static BayRow row(Bay bay, Build build, Figures figures) {
        String holds =
                bay.holds().stream().map(id -> PartChoice.name(build, id)).collect(Collectors.joining(", "));
        return new BayRow(
                bay.code(), bay.name(), figures.lengthNumber(bay.fromX()) + " to " + figures.length(bay.toX()), holds);
    }

    /** By the parts' names of today. */
    private static RuleRow row(KeepApart rule, Build build, Figures figures) {
        String name = PartChoice.name(build, rule.first()) + " from " + PartChoice.name(build, rule.second());
        return new RuleRow(rule.id(), name, figures.length(rule.atLeast()));
    }
}
