package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Entries;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads the channels as typed. Whether a plan is a good one is judged elsewhere: here it only has to be whole. */
final class ChannelFields {

    private final Entries entries;
    private final Build seen;
    private final Set<Integer> numbers = new HashSet<>();

    ChannelFields(Entries entries, Build seen) {
        this.entries = entries;
        this.seen = seen;
    }

    List<Channel> channels() {
        List<Channel> channels = new ArrayList<>();
        for (ChannelRow row : ChannelRow.all(entries.typed(), seen)) {
            if (!isBlank(row)) {
                Channel channel = channel(row);
                if (channel != null) {
                    channels.add(channel);
                }
            }
        }
        return channels;
    }

    private boolean isBlank(ChannelRow row) {
        return entries.typed().isBlank(row.row(), List.of("code", "number", "control", "pinned"))
                && row.carried().stream().allMatch(each -> isBlank(each));
    }

    private boolean isBlank(CarriedRow row) {
        return entries.typed().isBlank(row.row(), List.of("function", "preset"));
    }

    private @Nullable Channel channel(ChannelRow row) {
        int number = number(row.row() + ".number");
        String control = entries.code(
                row.row() + ".control", Choices.names(seen.radio().controls()).keySet());
        List<Carried> carried = new ArrayList<>();
        Set<String> functions = new HashSet<>();
        for (CarriedRow each : row.carried()) {
            if (!isBlank(each)) {
                Carried read = carried(each, row);
                if (read != null && !functions.add(read.function())) {
                    entries.trouble(each.row() + ".function", "This function is on the channel already.");
                }
                if (read != null) {
                    carried.add(read);
                }
            }
        }
        boolean pinned = entries.typed().isTicked(row.row() + ".pinned");
        return entries.areFine() ? new Channel(number, control, pinned, carried) : null;
    }

    private int number(String field) {
        int number = entries.needed(
                field, entries.whole(field, 1, RadioLink.MOST_CHANNELS), 1, "Please give the number of the channel.");
        RadioLink link = seen.radio().link();
        if (!entries.isFine(field)) {
            return number;
        }
        if (link != null && number > link.channels()) {
            entries.trouble(field, "The link has " + link.channels() + " channels.");
        }
        if (!numbers.add(number)) {
            entries.trouble(field, "Channel " + number + " is there already: each number once.");
        }
        return number;
    }

    private @Nullable Carried carried(CarriedRow row, ChannelRow channel) {
        String field = row.row() + ".function";
        if (entries.typed().text(field).isEmpty()) {
            entries.trouble(field, "Please choose the function.");
        }
        String code =
                entries.code(field, Choices.names(seen.radio().functions()).keySet());
        RadioFunction function = row.function();
        if (code == null || function == null) {
            return null;
        }
        if (!row.isSwitched() && channel.steps() && channel.carried().stream().anyMatch(CarriedRow::isSwitched)) {
            entries.trouble(field, "A proportional function cannot be on a channel together with switched ones.");
        }
        List<String> states = row.isSwitched() ? states(row, channel, function) : List.of();
        String preset = state(row.row() + ".preset", RadioChoices.places(function));
        return entries.areFine() ? new Carried(code, states, preset) : null;
    }

    private List<String> states(CarriedRow row, ChannelRow channel, RadioFunction function) {
        List<String> states = new ArrayList<>();
        for (int i = 0; i < channel.positions(); i++) {
            String field = row.row() + ".state." + i;
            String state = state(field, function.states());
            states.add(entries.needed(field, state, "", "Please say its state at position " + (i + 1) + "."));
        }
        return states;
    }

    private @Nullable String state(String field, List<String> states) {
        String typed = entries.typed().text(field);
        if (!typed.isEmpty() && !states.contains(typed)) {
            entries.trouble(field, "There is no such state any more. Please choose one from the list.");
            return null;
        }
        return typed.isEmpty() ? null : typed;
    }
}
