package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a new plan would change of the recorded one, in words. */
final class PlanChanges {

    private final List<Channel> recorded;
    private final RadioNames names;

    private PlanChanges(List<Channel> recorded, RadioNames names) {
        this.recorded = recorded;
        this.names = names;
    }

    /** None where both are the same. */
    static List<String> between(List<Channel> recorded, List<Channel> planned, RadioNames names) {
        PlanChanges changes = new PlanChanges(recorded, names);
        List<String> words = new ArrayList<>();
        planned.forEach(channel -> words.addAll(changes.of(channel)));
        words.addAll(changes.presetsLeftOut(planned));
        recorded.stream()
                .filter(channel -> numbered(channel.number(), planned) == null)
                .forEach(channel -> words.add("Channel " + channel.number() + " becomes free."));
        return words;
    }

    private List<String> of(Channel channel) {
        List<String> words = new ArrayList<>();
        Channel before = numbered(channel.number(), recorded);
        String control = channel.control();
        if (control != null && (before == null || !control.equals(before.control()))) {
            words.add("Channel " + channel.number() + " is moved by " + names.control(control)
                    + (before == null || before.control() == null
                            ? "."
                            : ", no longer by " + names.control(before.control()) + "."));
        }
        channel.carries().stream()
                .map(carried -> of(carried, channel.number()))
                .filter(Objects::nonNull)
                .forEach(words::add);
        return words;
    }

    private @Nullable String of(Carried carried, int number) {
        List<Channel> before = recorded.stream()
                .filter(channel -> channel.functions().contains(carried.function()))
                .toList();
        String name = names.function(carried.function());
        if (before.isEmpty()) {
            return name + " gets channel " + number + ".";
        }
        if (before.stream().noneMatch(channel -> channel.number() == number)) {
            return name + " moves from channel " + before.get(0).number() + " to channel " + number + ".";
        }
        Carried now = carried(carried.function(), before);
        if (now != null && !now.states().equals(carried.states())) {
            return name + " on channel " + number + " becomes " + String.join(", ", carried.states()) + ".";
        }
        String preset = carried.presetState();
        return now == null || preset == null || preset.equals(now.presetState())
                ? null
                : name + " is preset to " + preset + ".";
    }

    /** In one sentence: where the receiver does not act, it is every preset there was. */
    private List<String> presetsLeftOut(List<Channel> planned) {
        List<String> left = planned.stream()
                .flatMap(channel -> channel.carries().stream())
                .filter(carried -> carried.presetState() == null)
                .map(carried -> carried(carried.function(), recorded))
                .filter(before -> before != null && before.presetState() != null)
                .map(before -> names.function(before.function()))
                .toList();
        return left.isEmpty()
                ? List.of()
                : List.of("No preset is needed any more for " + RadioNames.all(left.stream()) + ".");
    }

    private static @Nullable Carried carried(String function, List<Channel> channels) {
        return channels.stream()
                .flatMap(channel -> channel.carries().stream())
                .filter(carried -> carried.function().equals(function))
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Channel numbered(int number, List<Channel> channels) {
        return channels.stream()
                .filter(channel -> channel.number() == number)
                .findFirst()
                .orElse(null);
    }
}
