package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.core.build.NotNeeded.FunctionState;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Combinations of states that the team can do without.
 *
 * @param member who gives up what is new or changed
 */
record GivenUpForm(String member) implements RadioForm {

    /** The states of a function to choose from. */
    record Group(String function, List<Choice> states) {}

    record Choice(String value, String words) {}

    @Override
    public String view() {
        return "radio/given-up";
    }

    @Override
    public void show(Build build, Shown fields) {
        List<NotNeeded> all = build.radio().notNeeded();
        for (int i = 0; i < all.size(); i++) {
            NotNeeded given = all.get(i);
            String row = GivenUpRows.LIST + "." + i;
            fields.text(row + ".code", given.id())
                    .ticks(row + ".phases", given.phases())
                    .text(row + ".why", given.why());
            for (int j = 0; j < given.states().size(); j++) {
                fields.text(
                        row + ".state." + j, GivenUpRows.value(given.states().get(j)));
            }
        }
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        List<Group> groups = build.radio().functions().stream()
                .filter(function -> function.kind() == RadioFunction.Kind.SWITCHED)
                .map(GivenUpForm::group)
                .toList();
        GivenUpRows rows = new GivenUpRows(entries, build, member);
        return Map.of(
                "groups", groups,
                "picks", rows.picks(groups.size()),
                "givenBy", rows.givenBy(),
                "phases", build.phases(),
                "gone", entries.typed().gone(GivenUpRows.LIST),
                "going",
                        rows.takenBack().stream()
                                .map(each -> "“" + GivenUpRows.words(each, build)
                                        + "” is asked for again when you save, wherever the demands ask for it.")
                                .toList());
    }

    private static Group group(RadioFunction function) {
        return new Group(
                function.name(),
                function.states().stream()
                        .map(state -> new Choice(
                                GivenUpRows.value(new FunctionState(function.code(), state)),
                                function.name() + ": " + state))
                        .toList());
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        GivenUpRows rows = new GivenUpRows(entries, seen, member);
        List<NotNeeded> wanted = new ArrayList<>(rows.read());
        if (!entries.areFine()) {
            return Optional.empty();
        }
        List<NotNeeded> back = rows.takenBack();
        seen.radio().notNeeded().stream()
                .filter(each -> !back.contains(each)
                        && wanted.stream().noneMatch(one -> one.id().equals(each.id())))
                .forEach(wanted::add);
        String title = back.isEmpty()
                ? "Combinations given up"
                : "Asked for again: "
                        + String.join(
                                ", ",
                                back.stream()
                                        .map(each -> GivenUpRows.words(each, seen))
                                        .toList());
        return Optional.of(Deed.fitting(title, build -> build.withNotNeeded(wanted)));
    }
}
