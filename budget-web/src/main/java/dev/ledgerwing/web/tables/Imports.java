package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.file.table.TableReading;
import dev.ledgerwing.web.airframe.ImpactStrip;
import dev.ledgerwing.web.airframe.Landings;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.ElementIds;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.team.Member;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Brings a table to the desk: all of it as one revision, or nothing. */
@Component
class Imports {

    private static final int LONGEST_REASON = 500;
    private static final int MOST_SAID = 3;

    private final Desk desk;
    private final ElementIds ids;
    private final Landings landings;

    Imports(Desk desk, ElementIds ids, Landings landings) {
        this.desk = desk;
        this.ids = ids;
        this.landings = landings;
    }

    /** Imports a usable table. Gives the strip, or nothing and the reasons in {@code sentences}. */
    Optional<ImpactStrip> apply(
            Upload upload, TableReading reading, ImportForm form, Member member, List<String> sentences) {
        return upload.once(() -> applied(upload, reading, form, member, sentences));
    }

    private Optional<ImpactStrip> applied(
            Upload upload, TableReading reading, ImportForm form, Member member, List<String> sentences) {
        TableDeed table = new TableDeed(reading, form.placing(), form.looseAssembly());
        Deed deed = Deed.fitting(table.title(upload.name()), base -> table.into(base, ids.freshLines(base)));
        Seen seen = new Seen(upload.airframe(), form.seenOrFirst());
        String reason = reason(form.reason(), reading.wrongTotals());
        Outcome outcome = desk.change(seen, deed, new Signature(member.name(), reason));
        sentences.addAll(Landings.sentences(outcome));
        return outcome instanceof Outcome.Landed landed
                ? Optional.of(withTotals(landings.strip(landed, seen, member.figures()), reading.wrongTotals()))
                : Optional.empty();
    }

    /** The reason as typed and behind it the sums that did not come out, so that the history keeps them. */
    static String reason(String typed, List<String> wrongTotals) {
        if (wrongTotals.isEmpty()) {
            return typed;
        }
        String all = Stream.concat(Stream.of(sentence(typed)), wrongTotals.stream())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
        return Excerpt.of(all, LONGEST_REASON);
    }

    private static String sentence(String typed) {
        return typed.isEmpty() || typed.matches(".*[.!?…]") ? typed : typed + ".";
    }

    private static ImpactStrip withTotals(ImpactStrip strip, List<String> wrongTotals) {
        if (wrongTotals.isEmpty()) {
            return strip;
        }
        int more = wrongTotals.size() - MOST_SAID;
        String totals = wrongTotals.stream().limit(MOST_SAID).collect(Collectors.joining(" "))
                + (more > 0 ? " And " + more + (more == 1 ? " more total disagrees." : " more totals disagree.") : "");
        String note = strip.note() == null ? totals : strip.note() + " " + totals;
        return new ImpactStrip(strip.code(), strip.title(), strip.parts(), strip.undoNumber(), note);
    }
}
