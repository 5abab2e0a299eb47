package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.PowerSource;
import dev.ledgerwing.core.review.BuildReview;
import java.util.List;

/**
 * One source.
 *
 * @param part what it is in the ledger, in words
 */
record SourceRow(String code, String name, String what, String part, String load) {

    static List<SourceRow> of(BuildReview review) {
        ElementWords words = new ElementWords(review.units());
        return review.build().power().sources().stream()
                .map(source -> row(source, words, review))
                .toList();
    }

    private static SourceRow row(PowerSource source, ElementWords words, BuildReview review) {
        Double load = review.figures().get("power.source." + source.code() + ".loadPercent");
        return new SourceRow(
                source.code(),
                source.name(),
                words.source(source),
                part(source, review.build()),
                source.kind() == PowerSource.Kind.SOLAR ? "no source in the dark" : Electric.percent(load));
    }

    private static String part(PowerSource source, Build build) {
        String id = source.part();
        return id == null
                ? "no part of the ledger"
                : build.line(id).map(PartLine::name).orElse(id);
    }
}
