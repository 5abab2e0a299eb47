package dev.ledgerwing.web.weighing;

import dev.ledgerwing.core.balance.weighing.WeighInDeeds;
import dev.ledgerwing.core.balance.weighing.WeighInDeeds.Choice;
import dev.ledgerwing.core.balance.weighing.WeighInReport;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.WeighIn;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.AirframePage;
import dev.ledgerwing.web.airframe.TitleBlocks;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Readings;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.forms.Forms;
import dev.ledgerwing.web.forms.Sent;
import dev.ledgerwing.web.forms.Typed;
import dev.ledgerwing.web.support.Moments;
import dev.ledgerwing.web.support.Refusal;
import dev.ledgerwing.web.team.Member;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A weighing of the record: what it said, and booking or removing it later. */
@Controller
@RequestMapping("/airframes/{code}/weigh-ins/{id}")
class WeighInController {

    private final Readings readings;
    private final Forms forms;
    private final TitleBlocks titleBlocks;

    WeighInController(Readings readings, Forms forms, TitleBlocks titleBlocks) {
        this.readings = readings;
        this.forms = forms;
        this.titleBlocks = titleBlocks;
    }

    @GetMapping
    String show(@PathVariable String code, @PathVariable String id, Figures figures, Model model) {
        Snapshot head = readings.head(code);
        WeighIn weighIn = in(head.build(), id);
        model.addAttribute("block", titleBlocks.of(head, AirframePage.BALANCE, figures));
        model.addAttribute("name", weighIn.name());
        model.addAttribute("date", Moments.day(weighIn.date()));
        model.addAttribute("ledgerRevision", weighIn.ledger().revision());
        model.addAttribute("report", ReportView.of(WeighInReport.of(head.build(), weighIn, figures), figures));
        model.addAttribute("supports", SupportRow.of(weighIn, figures));
        return "weighing/show";
    }

    @PostMapping("/book")
    String book(
            @PathVariable String code,
            @PathVariable String id,
            @RequestParam Choice choice,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        WeighInReport seen = report(forms.seen(sent), id);
        Deed deed = new Deed(
                seen.weighIn().name() + ": " + ReportView.outcome(seen, choice),
                Nature.CORRECTED,
                build -> WeighInDeeds.booked(build, report(build, id), choice),
                true);
        return forms.act(deed, sent, AirframePage.BALANCE, after);
    }

    @PostMapping("/remove")
    String remove(
            @PathVariable String code,
            @PathVariable String id,
            @RequestParam MultiValueMap<String, String> typed,
            Member member,
            RedirectAttributes after) {
        Sent sent = new Sent(code, Typed.of(typed), member);
        String name = in(forms.seen(sent), id).name();
        Deed deed = Deed.correcting(
                name + " removed",
                build -> build.withWeighIns(build.weighIns().stream()
                        .filter(each -> !each.id().equals(id))
                        .toList()));
        return forms.act(deed, sent, AirframePage.BALANCE, after);
    }

    private static WeighInReport report(Build build, String id) {
        return WeighInReport.of(build, in(build, id), Figures.METRIC);
    }

    private static WeighIn in(Build build, String id) {
        return build.weighIns().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no weighing “" + id + "” in this airframe."));
    }
}
