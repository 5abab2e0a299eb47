package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.radio.RadioStatement;
import java.util.List;
import java.util.Map;

/** The drawings of the radio, ready to stand in a page. */
public final class RadioPictures {

    private RadioPictures() {}

    /** What each phase asks of each switched function, as recorded; functions that share one of the channels stand together. */
    public static Picture grid(Build build, List<Channel> channels) {
        DemandView view = new DemandViews(build, channels).view();
        return new Picture(DemandChart.svg(view, Layout.WIDE), DemandChart.svg(view, Layout.NARROW));
    }

    /** The same with the channels in force. */
    public static Picture grid(RadioStatement radio) {
        return grid(radio.build(), radio.inForce());
    }

    /** What the controls of the transmitter command by these channels: those recorded, or others that are looked at. */
    public static Picture transmitter(Build build, List<Channel> channels) {
        return picture(controls(build, channels));
    }

    /** The same with the channels in force, what is wrong with them marked. */
    public static Picture transmitter(RadioStatement radio) {
        return picture(controls(radio));
    }

    /** What {@link #transmitter(RadioStatement)} shows, in words. */
    public static TransmitterView controls(RadioStatement radio) {
        boolean proposed = !radio.isRecorded() && !radio.inForce().isEmpty();
        List<String> head = proposed ? List.of("Only proposed: no channels are recorded yet.") : List.of();
        Map<Integer, String> faults = FaultNotes.byChannel(radio.build(), radio.faults());
        return new TransmitterViews(radio.build(), radio.inForce(), faults).view(head);
    }

    /** What {@link #transmitter(Build, List)} shows, in words. */
    public static TransmitterView controls(Build build, List<Channel> channels) {
        return new TransmitterViews(build, channels, Map.of()).view(List.of());
    }

    private static Picture picture(TransmitterView view) {
        return new Picture(TransmitterChart.svg(view, Layout.WIDE), TransmitterChart.svg(view, Layout.NARROW));
    }
}
