package dev.ledgerwing.web.balance;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.support.Moments;
import java.util.Comparator;
import java.util.List;

/** A weighing in the list of them. */
record WeighInRow(String id, String name, String date, String what, String mass, String supports) {

    /** Newest first. */
    static List<WeighInRow> of(Build build, Figures figures) {
        return build.weighIns().stream()
                .sorted(Comparator.comparing(WeighIn::date).reversed())
                .map(each -> row(each, build, figures))
                .toList();
    }

    private static WeighInRow row(WeighIn weighed, Build build, Figures figures) {
        String assembly = weighed.assembly();
        Mass net = weighed.supports().stream()
                .map(support -> support.reading().minus(support.tare()))
                .reduce(Mass.ZERO, Mass::plus);
        int supports = weighed.supports().size();
        return new WeighInRow(
                weighed.id(),
                weighed.name(),
                Moments.day(weighed.date()),
                assembly == null
                        ? "whole airframe"
                        : build.assembly(assembly).map(Assembly::name).orElse(assembly),
                figures.mass(net),
                supports == 1 ? "1 support" : supports + " supports");
    }
}
