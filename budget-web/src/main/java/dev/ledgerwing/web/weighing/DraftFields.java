package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.balance.weighing.WeighInDraft;
import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.LoadCase.ExtraItem;
import dev.ledgerwing.core.build.MassUncertainty;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.build.WeighIn.Scale;
import dev.ledgerwing.core.build.WeighIn.Support;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.ExtraFields;
import dev.ledgerwing.web.forms.Shown;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what was typed of a weighing. */
final class DraftFields {

    private static final double STEEPEST_DEG = 60;
    private static final Length USUAL_ARM = Length.ofMm(1);
    private static final Scale UNUSABLE = new Scale(Mass.ofGrams(1), Mass.ZERO);

    private DraftFields() {}

    /** @param before the weighing before, on the same scales and supports as likely as not */
    static void show(Build build, @Nullable WeighIn before, Shown fields) {
        MassUncertainty rules = build.judgedBy().massUncertainty();
        fields.mass("step", before == null ? rules.scaleStep() : before.scale().step())
                .mass(
                        "maxError",
                        before == null ? rules.scaleMaxError() : before.scale().maxError())
                .length("arms", before == null ? USUAL_ARM : before.armUncertainty())
                .number("noseUp", 0.0)
                .number("tilt", null);
        SupportFields.show(before == null ? List.of() : before.supports(), fields);
    }

    /** What was typed; where something is wrong it says so in {@code entries}, and the draft is of no use. */
    static WeighInDraft draft(String id, Entries entries, Build build) {
        String name = entries.name("name", "Please name the weighing.");
        LocalDate date = date(entries);
        String assembly = chosenAssembly(entries, build);
        LoadCase stood = chosenCase(entries, build);
        List<ExtraItem> extra = ExtraFields.items(entries, Basis.WEIGHED);
        Length arms = entries.needed(
                "arms", entries.extent("arms"), Length.ZERO, "Please give how sure the places of the supports are.");
        Double noseUp = entries.number("noseUp", -STEEPEST_DEG, STEEPEST_DEG);
        Double tilt = entries.number("tilt", -STEEPEST_DEG, STEEPEST_DEG);
        Scale scale = scale(entries);
        List<Support> supports = SupportFields.supports(entries, tilt != null || !entries.isFine("tilt"));
        return new WeighInDraft(
                id,
                name,
                date,
                assembly,
                stood.code(),
                aboard(entries, build, stood),
                extra,
                scale,
                arms,
                noseUp == null ? 0 : noseUp,
                tilt,
                supports);
    }

    private static LocalDate date(Entries entries) {
        try {
            return LocalDate.parse(entries.typed().text("date"));
        } catch (DateTimeParseException unread) {
            entries.trouble("date", "Please give the day as year-month-day: 2026-05-21.");
            return LocalDate.EPOCH;
        }
    }

    private static @Nullable String chosenAssembly(Entries entries, Build build) {
        String code = entries.typed().text("assembly");
        if (!code.isEmpty() && build.assembly(code).isEmpty()) {
            entries.trouble("assembly", "Please choose one from the list.");
        }
        return code.isEmpty() ? null : code;
    }

    private static LoadCase chosenCase(Entries entries, Build build) {
        String code = entries.typed().text("case");
        return build.loadCases().stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseGet(() -> {
                    entries.trouble("case", "Please choose one from the list.");
                    return build.designCase();
                });
    }

    private static Scale scale(Entries entries) {
        Mass step = entries.mass("step");
        Mass maxError = entries.mass("maxError");
        Mass digit = step == null ? Mass.ZERO : step;
        Mass error = maxError == null ? Mass.ZERO : maxError;
        boolean isUsable = digit.mg() > 0 || error.mg() > 0;
        if (!isUsable && entries.isFine("step") && entries.isFine("maxError")) {
            entries.trouble("step", "Please give the step of the scales, or how far they may be off.");
        }
        return isUsable ? new Scale(digit, error) : UNUSABLE;
    }

    /** Null = all that are aboard in the load case. */
    private static @Nullable List<String> aboard(Entries entries, Build build, LoadCase stood) {
        List<String> left = entries.typed().all("left");
        return left.isEmpty()
                ? null
                : build.lines().stream()
                        .map(PartLine::id)
                        .filter(id -> !left.contains(id) && !stood.absent().contains(id))
                        .toList();
    }
}
