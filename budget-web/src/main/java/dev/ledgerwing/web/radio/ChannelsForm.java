package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Choices;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The channels by hand: what moves each, and what it commands at every position. */
final class ChannelsForm implements RadioForm {

    static final String LIST = "channel";

    @Override
    public String view() {
        return "radio/channels";
    }

    @Override
    public void show(Build build, Shown fields) {
        List<Channel> channels = build.radio().channels();
        for (int i = 0; i < channels.size(); i++) {
            Channel channel = channels.get(i);
            String row = LIST + "." + i;
            fields.text(row + ".code", channel.id())
                    .text(row + ".number", channel.id())
                    .text(row + ".control", channel.control())
                    .tick(row + ".pinned", channel.pinned());
            for (int j = 0; j < channel.carries().size(); j++) {
                show(CarriedRow.group(row, j), channel.carries().get(j), fields);
            }
        }
    }

    private static void show(String row, Carried carried, Shown fields) {
        fields.text(row + ".function", carried.function()).text(row + ".preset", carried.presetState());
        for (int i = 0; i < carried.states().size(); i++) {
            fields.text(row + ".state." + i, carried.states().get(i));
        }
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Map<String, Object> around = new LinkedHashMap<>();
        RadioLink link = build.radio().link();
        around.put("channels", ChannelRow.all(entries.typed(), build));
        around.put("gone", entries.typed().gone(LIST));
        around.put("going", going(build, entries));
        around.put(
                "controls",
                Choices.optional("nothing yet", Choices.names(build.radio().controls())));
        around.put(
                "functions",
                Choices.optional("please choose", Choices.names(build.radio().functions())));
        around.put("hasPresets", link != null && link.onLoss() == RadioLink.OnLoss.PRESET);
        around.put("linkWords", link == null ? "" : "The link has " + link.channels() + " channels.");
        return around;
    }

    private static List<String> going(Build build, Entries entries) {
        return build.radio().channels().stream()
                .filter(channel -> entries.typed().isTicked(LIST + ".gone", channel.id()))
                .map(channel ->
                        "Channel " + channel.number() + " goes when you save; what it commands is on no channel then.")
                .toList();
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        List<Channel> channels = new ArrayList<>(new ChannelFields(entries, seen).channels());
        if (!entries.areFine()) {
            return Optional.empty();
        }
        channels.addAll(others(entries, seen, channels));
        channels.sort(Comparator.comparingInt(Channel::number));
        return Optional.of(Deed.fitting("Channels edited by hand", build -> build.withChannels(channels)));
    }

    /** Channels of which the form said nothing. */
    private static List<Channel> others(Entries entries, Build seen, List<Channel> wanted) {
        List<String> spokenOf = new ArrayList<>(entries.typed().gone(LIST));
        for (int i = 0; i < entries.typed().rows(LIST); i++) {
            spokenOf.add(entries.typed().text(LIST + "." + i + ".code"));
        }
        return seen.radio().channels().stream()
                .filter(channel -> !spokenOf.contains(channel.id()))
                .filter(channel -> wanted.stream().noneMatch(each -> each.number() == channel.number()))
                .toList();
    }
}
