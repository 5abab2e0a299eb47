package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.balance.weighing.WeighInDeeds;
import dev.ledgerwing.core.balance.weighing.WeighInDeeds.Choice;
import dev.ledgerwing.core.balance.weighing.WeighInDraft;
import dev.ledgerwing.core.balance.weighing.WeighInReport;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.Problem;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.RecordForm;
import dev.ledgerwing.web.forms.Shown;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A new weighing: looked at first, then recorded with or without its difference being booked.
 *
 * @param against the revision that the form was made from, which the scales are held against
 * @param id the weighing will have
 */
record WeighInForm(Snapshot against, String id, LocalDate today) implements RecordForm {

    /** The field of the button that was pressed: to look, or what becomes of the difference. */
    static final String DO = "do";

    private static final Pattern ROW = Pattern.compile("(supports|extra)\\[(\\d+)]\\.(\\w+)");

    @Override
    public String view() {
        return "weighing/form";
    }

    @Override
    public AirframePage page() {
        return AirframePage.BALANCE;
    }

    @Override
    public void show(Build build, Shown fields) {
        Optional<WeighIn> before =
                build.weighIns().stream().filter(WeighIn::isWhole).reduce((first, second) -> second);
        fields.text("name", "Weighing of " + today)
                .text("date", today.toString())
                .text("assembly", "")
                .text("case", build.designCase().code());
        DraftFields.show(build, before.orElse(null), fields);
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Map<String, Object> around = new HashMap<>(WeighInChoices.of(build));
        boolean isAsked = !entries.typed().text(DO).isEmpty();
        Entries anew = entries.anew();
        WeighInDraft draft = isAsked ? DraftFields.draft(id, anew, build) : null;
        if (draft != null && anew.areFine()) {
            around.put("report", ReportView.of(report(build, draft, entries.figures()), entries.figures()));
        }
        return around;
    }

    private WeighInReport report(Build build, WeighInDraft draft, Figures figures) {
        return WeighInReport.of(build, draft, revision(), figures);
    }

    private WeighInReport.LedgerRevision revision() {
        return new WeighInReport.LedgerRevision(against.revision().number(), against.fingerprint());
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        WeighInDraft draft = DraftFields.draft(id, entries, seen);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        WeighInReport report = report(seen, draft, entries.figures());
        report.reading().refused().forEach(problem -> entries.trouble(field(problem), sentence(problem)));
        Optional<Choice> choice = Arrays.stream(Choice.values())
                .filter(each -> each.name().equals(entries.typed().text(DO)))
                .findFirst();
        return choice.filter(each -> entries.areFine()).map(chosen -> recording(draft, report, chosen));
    }

    /** Worked out from the whole record: whatever lands in between makes it stale, and it is looked at again. */
    private Deed recording(WeighInDraft draft, WeighInReport report, Choice choice) {
        return new Deed(
                draft.name() + ": " + ReportView.outcome(report, choice),
                Nature.CORRECTED,
                build -> WeighInDeeds.recorded(build, draft, revision(), choice),
                true);
    }

    /** The field of a reading that cannot be. */
    private static String field(Problem problem) {
        Matcher row = ROW.matcher(problem.place());
        if (row.matches()) {
            String list = row.group(1).equals("supports") ? "support" : "extra";
            return list + "." + row.group(2) + "." + (row.group(3).equals("massG") ? "mass" : "x");
        }
        return problem.place().equals("tiltedNoseUpDeg") ? "tilt" : "";
    }

    private static String sentence(Problem problem) {
        String text = problem.sentence();
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + (text.endsWith(".") ? "" : ".");
    }
}
