package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.web.airframe.ImpactStrip;
import dev.ledgerwing.web.airframe.Landings;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.desk.Desk;
import dev.ledgerwing.web.desk.ElementIds;
import dev.ledgerwing.web.desk.Outcome;
import dev.ledgerwing.web.desk.Seen;
import dev.ledgerwing.web.desk.Signature;
import dev.ledgerwing.web.desk.Snapshot;
import dev.ledgerwing.web.team.Member;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;

/** Brings what was typed for a part to the desk. */
@Component
class PartChanges {

    private static final Assembly NONE = new Assembly("none", "none", Assembly.MovesWith.FUSELAGE);

    private final Desk desk;
    private final ElementIds ids;
    private final Landings landings;

    PartChanges(Desk desk, ElementIds ids, Landings landings) {
        this.desk = desk;
        this.ids = ids;
        this.landings = landings;
    }

    /**
     * What came of it.
     *
     * @param strip what the change did; null when the form has to be shown again
     * @param stand the record to be shown now
     */
    record Result(@Nullable ImpactStrip strip, Snapshot stand) {}

    Result add(Snapshot seen, PartForm form, BindingResult problems, Member member) {
        Assembly assembly = assembly(seen.build(), form, problems);
        Optional<PartLine> line = new PartEntry(form, null, figures(form), problems)
                .line(ids.freshLine(seen.build()), assembly.code(), seen.build());
        if (line.isEmpty()) {
            return new Result(null, seen);
        }
        PartLine added = line.get();
        Deed deed =
                Deed.fitting(DeedTitle.added(added), build -> PartDeeds.added(withAssembly(build, assembly), added));
        return toDesk(seen, deed, form, problems, member);
    }

    Result edit(Snapshot seen, PartLine before, PartForm form, BindingResult problems, Member member) {
        Assembly assembly = assembly(seen.build(), form, problems);
        Optional<PartLine> line =
                new PartEntry(form, before, figures(form), problems).line(before.id(), assembly.code(), seen.build());
        if (line.isEmpty()) {
            return new Result(null, seen);
        }
        PartLine after = line.get();
        Nature nature = Objects.requireNonNullElse(form.nature(), Nature.FITTED);
        Deed deed = new Deed(
                DeedTitle.changed(before, after, assembly.name()),
                nature,
                build -> PartDeeds.changed(withAssembly(build, assembly), after, nature),
                // what is left of the booking was worked out from the whole record
                nature == Nature.CORRECTED && !seen.build().bookings().isEmpty());
        return toDesk(seen, deed, form, problems, member);
    }

    /** Removes a part. Gives the strip, or nothing and the reasons in {@code sentences}. */
    Optional<ImpactStrip> remove(Snapshot seen, PartLine line, Member member, List<String> sentences) {
        Deed deed = Deed.fitting(DeedTitle.removed(line), build -> PartDeeds.removed(build, line.id()));
        Outcome outcome = desk.change(seenOf(seen), deed, new Signature(member.name(), ""));
        sentences.addAll(Landings.sentences(outcome));
        return landings.strip(outcome, seenOf(seen), member.figures());
    }

    private Result toDesk(Snapshot seen, Deed deed, PartForm form, BindingResult problems, Member member) {
        Outcome outcome = desk.change(seenOf(seen), deed, new Signature(member.name(), form.reason()));
        Landings.sentences(outcome).forEach(sentence -> problems.reject("desk", sentence));
        Snapshot stand = outcome.head();
        return new Result(
                landings.strip(outcome, seenOf(seen), member.figures()).orElse(null), stand);
    }

    private static Figures figures(PartForm form) {
        return new Figures(Objects.requireNonNull(form.units()));
    }

    private static Seen seenOf(Snapshot snapshot) {
        return new Seen(snapshot.build().airframe().code(), snapshot.revision().number());
    }

    /** The assembly chosen, or the new one named; where neither can be, one that {@link PartEntry} finds fault with. */
    private static Assembly assembly(Build build, PartForm form, BindingResult problems) {
        if (form.newAssembly().isEmpty() || problems.hasFieldErrors("newAssembly")) {
            return build.assembly(form.assembly()).orElse(NONE);
        }
        return AssemblyNames.named(build, form.newAssembly());
    }

    private static Build withAssembly(Build build, Assembly assembly) {
        return build.assembly(assembly.code()).isPresent() ? build : PartDeeds.added(build, assembly);
    }
}
