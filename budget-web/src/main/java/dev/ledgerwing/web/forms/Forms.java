package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.Landings;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Shows forms on the record and brings what was typed in them to the desk. Nothing typed is ever lost on the way. */
@Component
public class Forms {

    private static final int LONGEST_REASON = 500;
    private static final String REASON = "reason";

    private final Desk desk;
    private final Readings readings;
    private final Landings landings;
    private final TitleBlocks titleBlocks;

    Forms(Desk desk, Readings readings, Landings landings, TitleBlocks titleBlocks) {
        this.desk = desk;
        this.readings = readings;
        this.landings = landings;
        this.titleBlocks = titleBlocks;
    }

    /** The form as it shows the newest revision. */
    public String show(RecordForm form, Snapshot head, Figures figures, Model model) {
        return page(form, head, new Entries(shown(form, head, figures).typed(), new Shown(figures)), model);
    }

    private static Shown shown(RecordForm form, Snapshot at, Figures figures) {
        Shown shown = new Shown(figures)
                .text(Sent.SEEN, Integer.toString(at.revision().number()))
                .text(Sent.UNITS, figures.units().name());
        form.show(at.build(), shown);
        return shown;
    }

    private String page(RecordForm form, Snapshot stand, Entries entries, Model model) {
        Build build = stand.build();
        model.addAttribute("block", titleBlocks.of(stand, form.page(), entries.figures()));
        model.addAttribute("typed", entries.typed());
        model.addAttribute("troubles", entries.troubles());
        model.addAttribute("problems", entries.troubles().getOrDefault("", List.of()));
        model.addAttribute("massUnit", entries.figures().smallMassUnit());
        model.addAttribute("lengthUnit", entries.figures().lengthUnit());
        form.surroundings(build, entries).forEach(model::addAttribute);
        return form.view();
    }

    /** Does what a form says and leads to its page, or shows it again: with other rows, or with what is wrong. */
    public String take(RecordForm form, Sent sent, Answering answering) {
        Snapshot seen = readings.at(sent.seen());
        Shown shown = shown(form, seen, sent.figures());
        Optional<Typed> otherRows = RowButton.pressed(sent.typed());
        if (otherRows.isPresent()) {
            return page(form, seen, new Entries(otherRows.get(), shown), answering.model());
        }
        Entries entries = new Entries(sent.typed(), shown);
        String reason = entries.line(REASON, LONGEST_REASON);
        Optional<Deed> deed = form.deed(entries, seen.build());
        if (deed.isEmpty() || !entries.areFine()) {
            if (!entries.areFine()) {
                answering.refused();
            }
            return page(form, seen, entries, answering.model());
        }
        Outcome outcome =
                desk.change(sent.seen(), deed.get(), new Signature(sent.member().name(), reason));
        if (landings.tell(outcome, sent.seen(), sent.member().figures(), answering.after())) {
            return "redirect:" + form.page().address(sent.code());
        }
        answering.refused();
        Entries onTop = onTop(form, sent, shown, outcome.head());
        why(outcome).forEach(sentence -> onTop.trouble("", sentence));
        return page(form, outcome.head(), onTop, answering.model());
    }

    /** What was typed, going on from the newest revision. */
    private static Entries onTop(RecordForm form, Sent sent, Shown base, Snapshot head) {
        Shown theirs = shown(form, head, sent.figures());
        String number = theirs.typed().text(Sent.SEEN);
        Typed kept = form.isShownBy(head.build()) ? sent.typed().onTopOf(base.typed(), theirs.typed()) : sent.typed();
        return new Entries(kept.with(Sent.SEEN, number), theirs);
    }

    private static List<String> why(Outcome outcome) {
        List<String> sentences = new ArrayList<>(Landings.sentences(outcome));
        if (outcome instanceof Outcome.Clash) {
            sentences.add("What you typed is still here: save it again to have it so, or cancel to leave it.");
        }
        return sentences;
    }

    /** Does something that needs no form but perhaps a reason, and leads back to {@code page}. */
    public String act(Deed deed, Sent sent, AirframePage page, RedirectAttributes after) {
        String reason = sent.typed().text(REASON);
        Signature signature =
                new Signature(sent.member().name(), reason.substring(0, Math.min(reason.length(), LONGEST_REASON)));
        Outcome outcome = desk.change(sent.seen(), deed, signature);
        if (!landings.tell(outcome, sent.seen(), sent.member().figures(), after)) {
            after.addFlashAttribute("problems", Landings.sentences(outcome));
        }
        return "redirect:" + page.address(sent.code());
    }

    /** The record a form was made from. */
    public Build seen(Sent sent) {
        return readings.at(sent.seen()).build();
    }
}
