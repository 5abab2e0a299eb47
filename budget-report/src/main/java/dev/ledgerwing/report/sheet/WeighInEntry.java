package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** One weigh-in: what the scales said against what the ledger said that day. */
public record WeighInEntry(String date, String name, String what, String scales, String ledger, String difference) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    /** The latest first. */
    static List<WeighInEntry> of(Build build, Figures units) {
        return build.weighIns().stream()
                .sorted(Comparator.comparing(WeighIn::date).reversed())
                .map(weighIn -> entry(weighIn, build, units))
                .toList();
    }

    private static WeighInEntry entry(WeighIn weighIn, Build build, Figures units) {
        Mass net = net(weighIn);
        String assembly = weighIn.assembly();
        return new WeighInEntry(
                DAY.format(weighIn.date()),
                weighIn.name(),
                assembly == null
                        ? "whole airframe"
                        : build.assembly(assembly).map(Assembly::name).orElse(assembly),
                units.mass(net),
                units.mass(weighIn.ledger().mass()),
                units.signedMass(net.minus(weighIn.ledger().mass())));
    }

    /** Readings less tares, less what stood on the scales and is no part of the build. */
    private static Mass net(WeighIn weighIn) {
        Mass net = weighIn.supports().stream().map(WeighInEntry::net).reduce(Mass.ZERO, Mass::plus);
        return weighIn.extra().stream()
                .map(ExtraItem::mass)
                .filter(Objects::nonNull)
                .reduce(net, Mass::minus);
    }

    private static Mass net(Support support) {
        return support.reading().minus(support.tare());
    }
}
