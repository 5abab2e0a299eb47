package dev.ledgerwing.report.review;

import dev.ledgerwing.core.review.FigureChange;
import dev.ledgerwing.core.review.FindingChange;
import dev.ledgerwing.core.review.ImpactPart;
import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.report.text.JsonText;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The difference of two reviews for other programs: {@code figures} that differ, {@code findings} that differ, {@code impact}. */
public final class DeltaJson {

    private DeltaJson() {}

    public static String of(ReviewDelta delta) {
        ObjectNode json = JsonText.object();
        ObjectNode figures = json.putObject("figures");
        delta.figures().forEach(change -> figures.set(change.name(), figure(change)));
        ArrayNode findings = json.putArray("findings");
        delta.findings().forEach(change -> findings.add(finding(change)));
        ArrayNode impact = json.putArray("impact");
        delta.impact().forEach(part -> impact.add(part(part)));
        return JsonText.of(json);
    }

    private static ObjectNode figure(FigureChange change) {
        ObjectNode json = JsonText.object();
        json.set("before", JsonText.number(change.before()));
        json.set("after", JsonText.number(change.after()));
        json.set("change", JsonText.number(change.change()));
        return json;
    }

    private static ObjectNode finding(FindingChange change) {
        ObjectNode json = JsonText.object();
        json.put("kind", change.kind().name());
        set(json, "before", change.before());
        set(json, "after", change.after());
        return json;
    }

    private static void set(ObjectNode json, String name, @Nullable Finding finding) {
        if (finding == null) {
            json.putNull(name);
        } else {
            json.set(name, ReviewJson.finding(finding));
        }
    }

    private static ObjectNode part(ImpactPart part) {
        ObjectNode json = JsonText.object();
        json.put("text", part.text());
        json.put("verdict", part.verdict() == null ? null : part.verdict().name());
        return json;
    }
}
