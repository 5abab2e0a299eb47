package dev.ledgerwing.report.review;

import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Remedy;
import dev.ledgerwing.report.text.JsonText;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A review for other programs: {@code figures} (name with unit to value; what is not known is left out), {@code verdicts} (budget to
 * {@code HOLDS}, {@code TIGHT}, {@code UNKNOWN} or {@code BREAKS}) and {@code findings}, worst first.
 */
public final class ReviewJson {

    private ReviewJson() {}

    public static String of(BuildReview review) {
        ObjectNode json = JsonText.object();
        ObjectNode figures = json.putObject("figures");
        review.figures().forEach((name, value) -> figures.set(name, JsonText.number(value)));
        ObjectNode verdicts = json.putObject("verdicts");
        review.verdicts().forEach((budget, verdict) -> verdicts.put(budget.code(), verdict.name()));
        ArrayNode findings = json.putArray("findings");
        review.findings().forEach(finding -> findings.add(finding(finding)));
        return JsonText.of(json);
    }

    static ObjectNode finding(Finding finding) {
        ObjectNode json = JsonText.object();
        json.put("code", finding.code());
        json.put("budget", finding.budget().code());
        json.put("verdict", finding.verdict().name());
        json.put("subject", finding.subject());
        json.put("line", finding.line());
        json.set("measured", JsonText.number(finding.measured()));
        json.set("limit", JsonText.number(finding.limit()));
        json.set("marginLeft", JsonText.number(finding.marginLeft()));
        json.put("unit", finding.unit());
        json.put("sentence", finding.sentence());
        ArrayNode remedies = json.putArray("remedies");
        finding.remedies().forEach(remedy -> remedies.add(remedy(remedy)));
        return json;
    }

    private static ObjectNode remedy(Remedy remedy) {
        ObjectNode json = JsonText.object();
        json.put("sentence", remedy.sentence());
        json.set("costG", JsonText.grams(remedy.cost()));
        json.put("line", remedy.line());
        return json;
    }
}
