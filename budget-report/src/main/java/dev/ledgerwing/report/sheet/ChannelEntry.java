package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.TransmitterView;
import dev.ledgerwing.report.drawing.TransmitterView.ChannelMark;
import dev.ledgerwing.report.drawing.TransmitterView.ControlMark;
import dev.ledgerwing.report.drawing.TransmitterView.Said;
import dev.ledgerwing.report.drawing.TransmitterView.Stop;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One channel on paper, a row for each place of its control.
 *
 * @param note {@code pinned, shared by 3}; empty = nothing
 * @param onLoss what the receiver sends when the signal is lost; a dash = nothing of its own
 * @param fault breaks, with what is wrong; null = nothing is known to be
 */
public record ChannelEntry(
        int number,
        String control,
        String note,
        List<PlaceEntry> places,
        String onLoss,
        @Nullable VerdictMark fault) {

    private static final String NONE = "–";

    /**
     * A place of the control along the pulse.
     *
     * @param label its number; a dash for what moves freely
     * @param commands {@code Wheels: down; Charging: off}
     */
    public record PlaceEntry(String label, String commands) {}

    public ChannelEntry {
        places = List.copyOf(places);
    }

    /** Those that carry something, by number. */
    static List<ChannelEntry> of(TransmitterView view) {
        return view.controls().stream()
                .flatMap(control -> control.channels().stream().map(channel -> Map.entry(channel, control)))
                .sorted(Comparator.comparingInt(each -> each.getKey().number()))
                .map(each -> of(each.getKey(), each.getValue()))
                .toList();
    }

    private static ChannelEntry of(ChannelMark channel, ControlMark control) {
        return new ChannelEntry(
                channel.number(),
                control.name() + (control.note().isEmpty() ? "" : ", " + control.note()),
                channel.note(),
                channel.stops().stream().map(ChannelEntry::place).toList(),
                channel.onLoss().isEmpty() ? NONE : told(channel.onLoss()),
                channel.fault().isEmpty() ? null : VerdictMark.saying(Verdict.BREAKS, "breaks: " + channel.fault()));
    }

    private static PlaceEntry place(Stop stop) {
        return new PlaceEntry(stop.label().isEmpty() ? NONE : stop.label(), told(stop.says()));
    }

    private static String told(List<Said> said) {
        return said.stream().map(Said::told).collect(Collectors.joining("; "));
    }
}
