package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.power.network.NetworkStatement;
import dev.ledgerwing.core.power.network.SourceLoad;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One source, and the worst that is asked of it.
 *
 * @param note what it is
 * @param part what it is in the ledger
 * @param verdict null for solar cells, which nothing relies on
 */
record SourceRow(
        String code,
        String name,
        String note,
        String part,
        String rating,
        String load,
        String volts,
        @Nullable Verdict verdict) {

    static List<SourceRow> of(NetworkStatement network, Figures figures) {
        Build build = network.network().build();
        return build.power().sources().stream()
                .map(source -> row(source, network, new ElementWords(figures)))
                .toList();
    }

    private static SourceRow row(PowerSource source, NetworkStatement network, ElementWords words) {
        SourceLoad load = network.source(source.code()).orElse(null);
        String part = part(source, network.network().build());
        if (load == null) {
            return new SourceRow(source.code(), source.name(), words.source(source), part, "", "", "", null);
        }
        return new SourceRow(
                source.code(),
                source.name(),
                words.source(source),
                part,
                Electric.amperes(load.ratingA()) + ", peak " + Electric.amperes(load.peakRatingA()),
                Electric.atLeast(
                        load.isWhole(),
                        Electric.amperes(load.continuousA()) + ", peak " + Electric.amperes(load.peakA())),
                Electric.range(load.lowestV(), load.highestV()),
                load.verdict());
    }

    private static String part(PowerSource source, Build build) {
        String id = source.part();
        return id == null
                ? "no part of the ledger"
                : build.line(id).map(PartLine::name).orElse(id);
    }
}
