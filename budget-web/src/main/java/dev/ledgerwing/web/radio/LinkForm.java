package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.PulseTrain;
import dev.ledgerwing.core.build.RadioLink;
import dev.ledgerwing.core.build.RadioLink.ActsOnLoss;
import dev.ledgerwing.core.build.RadioLink.BoardLearnsBy;
import dev.ledgerwing.core.build.RadioLink.OnLoss;
import dev.ledgerwing.core.quantity.NumberUnit;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Bounds;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The link from the pilot to the airframe: how many channels, what happens when the signal is lost, and its frame. */
final class LinkForm implements RadioForm {

    private static final Bounds FRAME = new Bounds(NumberUnit.MICROSECOND, 1000, 100_000);
    private static final Bounds PULSE = new Bounds(NumberUnit.MICROSECOND, 100, 10_000);
    private static final Bounds GAP = new Bounds(NumberUnit.MICROSECOND, 100, 50_000);
    private static final List<String> OF_THE_TRAIN = List.of("frame", "longest", "gap");
    private static final List<String> ALL = List.of("channels", "loss", "acts", "learns", "frame", "longest", "gap");

    @Override
    public String view() {
        return "radio/link";
    }

    @Override
    public void show(Build build, Shown fields) {
        RadioLink link = build.radio().link();
        PulseTrain train = link == null ? null : link.train();
        fields.text("channels", link == null ? "" : Integer.toString(link.channels()))
                .text("loss", link == null ? "" : name(link.onLoss()))
                .text("acts", link == null ? "" : name(link.actsOnLoss()))
                .text("learns", link == null ? "" : name(link.boardLearnsBy()))
                .amount("frame", train == null ? null : train.frameUs())
                .amount("longest", train == null ? null : (Double) train.longestPulseUs())
                .amount("gap", train == null ? null : (Double) train.leastGapUs());
    }

    private static String name(@Nullable Enum<?> value) {
        return value == null ? "" : value.name();
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        return Map.of(
                "losses", RadioChoices.onLoss(),
                "actors", RadioChoices.actsOnLoss(),
                "learning", RadioChoices.boardLearnsBy(),
                "phases", build.phases());
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        RadioLink wanted = isBlank(entries, ALL) ? null : link(entries, seen);
        return entries.areFine()
                ? Optional.of(Deed.fitting("Radio link", build -> build.withRadioLink(wanted)))
                : Optional.empty();
    }

    private static boolean isBlank(Entries entries, List<String> fields) {
        return fields.stream().allMatch(field -> entries.typed().text(field).isEmpty());
    }

    private static @Nullable RadioLink link(Entries entries, Build seen) {
        int channels = entries.needed(
                "channels",
                entries.whole("channels", 1, RadioLink.MOST_CHANNELS),
                1,
                "Please give how many channels it carries.");
        int used =
                seen.radio().channels().stream().mapToInt(Channel::number).max().orElse(0);
        if (entries.isFine("channels") && channels < used) {
            entries.trouble("channels", "Channel " + used + " is in use: take it out of the channels first.");
        }
        OnLoss onLoss = entries.choiceOrNone("loss", OnLoss.values());
        ActsOnLoss acts = entries.choiceOrNone("acts", ActsOnLoss.values());
        BoardLearnsBy learns = entries.choiceOrNone("learns", BoardLearnsBy.values());
        PulseTrain train = isBlank(entries, OF_THE_TRAIN) ? null : train(entries);
        return entries.areFine() ? new RadioLink(channels, onLoss, acts, learns, train) : null;
    }

    private static @Nullable PulseTrain train(Entries entries) {
        Double frame = entries.amount("frame", FRAME);
        Double longest =
                entries.needed("longest", entries.amount("longest", PULSE), 0.0, "Please give the longest pulse, too.");
        Double gap = entries.needed("gap", entries.amount("gap", GAP), 0.0, "Please give the shortest gap, too.");
        return entries.areFine() ? new PulseTrain(frame, longest, gap) : null;
    }
}
