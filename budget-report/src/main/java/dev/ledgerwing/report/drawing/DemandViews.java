package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Demand;
import dev.ledgerwing.core.build.Phase;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioFunction.Kind;
import dev.ledgerwing.report.drawing.DemandView.Asked;
import dev.ledgerwing.report.drawing.DemandView.Cell;
import dev.ledgerwing.report.drawing.DemandView.Group;
import dev.ledgerwing.report.drawing.DemandView.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Makes a {@link DemandView} of the record of a build and of channels that carry its functions. */
final class DemandViews {

    private final Build build;
    private final List<Channel> channels;

    DemandViews(Build build, List<Channel> channels) {
        this.build = build;
        this.channels = channels.stream()
                .sorted(Comparator.comparingInt(Channel::number))
                .toList();
    }

    DemandView view() {
        return new DemandView(
                build.airframe().name(),
                build.phases().stream().map(Phase::name).toList(),
                groups(),
                notes());
    }

    private List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        for (Channel channel : channels) {
            add(groups, heading(channel), false, function -> carries(channel, function));
        }
        String left = channels.isEmpty() ? "" : "On no channel yet";
        add(groups, left, false, function -> function.needsChannel() && !isCarried(function));
        add(groups, "Not by radio", true, function -> isOtherwise(function) && isAskedFor(function));
        return groups;
    }

    private boolean isOtherwise(RadioFunction function) {
        return !function.needsChannel() && !isCarried(function);
    }

    private boolean isAskedFor(RadioFunction function) {
        return build.phases().stream()
                .anyMatch(phase -> !function.demandIn(phase.code()).equals(Demand.OPEN));
    }

    private void add(List<Group> groups, String heading, boolean quiet, Predicate<RadioFunction> which) {
        List<Row> rows = build.radio().functions().stream()
                .filter(function -> function.kind() == Kind.SWITCHED)
                .filter(which)
                .map(this::row)
                .toList();
        if (!rows.isEmpty()) {
            groups.add(new Group(heading, quiet, rows));
        }
    }

    private String heading(Channel channel) {
        int sharing = channel.carries().size();
        return "Channel " + channel.number() + (sharing > 1 ? ", shared by " + sharing : "");
    }

    private static boolean carries(Channel channel, RadioFunction function) {
        return channel.functions().contains(function.code());
    }

    private boolean isCarried(RadioFunction function) {
        return channels.stream().anyMatch(channel -> carries(channel, function));
    }

    private Row row(RadioFunction function) {
        List<Cell> cells = build.phases().stream()
                .map(phase -> cell(function, function.demandIn(phase.code())))
                .toList();
        return new Row(RadioWords.told(function), function.states(), cells);
    }

    private static Cell cell(RadioFunction function, Demand demand) {
        return new Cell(
                function.states().stream().map(state -> asked(demand, state)).toList());
    }

    private static Asked asked(Demand demand, String state) {
        if (demand.mustSelect().contains(state)) {
            return Asked.MUST;
        }
        if (demand.mayHave().isEmpty()) {
            return Asked.OPEN;
        }
        return demand.allows(state) ? Asked.MAY : Asked.NEVER;
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (build.phases().isEmpty()) {
            notes.add("No phase is recorded yet: nothing can be asked of a function.");
        }
        if (build.radio().functions().stream().noneMatch(function -> function.kind() == Kind.SWITCHED)) {
            notes.add("No switched function is recorded yet.");
        }
        note(notes, "Proportional, so without states to ask for: ", function -> function.kind() == Kind.PROPORTIONAL);
        note(
                notes,
                "Not by radio and nothing asked: ",
                function -> function.kind() == Kind.SWITCHED && isOtherwise(function) && !isAskedFor(function));
        return notes;
    }

    private void note(List<String> notes, String start, Predicate<RadioFunction> which) {
        List<String> names = build.radio().functions().stream()
                .filter(which)
                .map(RadioWords::told)
                .toList();
        if (!names.isEmpty()) {
            notes.add(start + String.join("; ", names) + ".");
        }
    }
}
