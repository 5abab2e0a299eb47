package dev.ledgerwing.web.airframe;

import dev.ledgerwing.core.build.Conflict;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.core.words.FieldWord;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Revision;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Says what became of a deed, for the strip above a page or for the top of a form. */
@Component
public class Landings {

    private final Readings readings;

    Landings(Readings readings) {
        this.readings = readings;
    }

    /** The strip for a deed that was done or had nothing to do; empty where it did not land. */
    public Optional<ImpactStrip> strip(Outcome outcome, Seen seen, Figures figures) {
        if (outcome instanceof Outcome.Landed landed) {
            return Optional.of(strip(landed, seen, figures));
        }
        return outcome instanceof Outcome.NothingChanged
                ? Optional.of(nothingChanged(seen.airframe()))
                : Optional.empty();
    }

    /** Hands the strip to the page that a redirect leads to; false where the deed did not land. */
    public boolean tell(Outcome outcome, Seen seen, Figures figures, RedirectAttributes after) {
        Optional<ImpactStrip> strip = strip(outcome, seen, figures);
        strip.ifPresent(done -> after.addFlashAttribute("strip", done));
        return strip.isPresent();
    }

    /** The strip for a change that landed, against the revision it landed on. */
    public ImpactStrip strip(Outcome.Landed landed, Seen seen, Figures figures) {
        Snapshot before = readings.at(new Seen(seen.airframe(), landed.landedOn()));
        Snapshot after = landed.head();
        ReviewDelta delta = ReviewDelta.between(before.reviewIn(figures), after.reviewIn(figures));
        Revision revision = after.revision();
        String note = landed.landedOn() == seen.number()
                ? null
                : "Merged with revision " + landed.landedOn() + " by "
                        + before.revision().author() + ".";
        return new ImpactStrip(
                seen.airframe(),
                revision.title(),
                delta.impact().stream().map(ImpactStrip.Part::of).toList(),
                revision.number() > 1 ? revision.number() : null,
                note);
    }

    /** The strip for a change that changed nothing. */
    private static ImpactStrip nothingChanged(String code) {
        return new ImpactStrip(
                code, "Nothing changed", List.of(), null, "Nothing was different, so nothing was written.");
    }

    /** Why a deed did not land, in sentences for the top of a form. */
    public static List<String> sentences(Outcome outcome) {
        if (outcome instanceof Outcome.Refused refused) {
            return refused.sentences().stream().map(Landings::sentence).toList();
        }
        if (outcome instanceof Outcome.Clash clash) {
            return clash.conflicts().stream()
                    .map(conflict -> sentence(conflict, clash.head().revision()))
                    .toList();
        }
        return List.of();
    }

    private static String sentence(Conflict conflict, Revision head) {
        String field =
                FieldWord.of(conflict.field()).map(word -> ", " + word.word()).orElse("");
        String what = conflict.subject() + field;
        return sentence(what + ": " + conflict.sentence()) + " " + head.author() + " made revision " + head.number()
                + " in the meantime (" + head.title() + ").";
    }

    private static String sentence(String text) {
        String capital = text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }
}
