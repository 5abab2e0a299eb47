package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Channel;
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

    /** What the controls of the transmitter command by these channels: those recorded, or others that are looked at. */
    public static Picture transmitter(Build build, List<Channel> channels) {
        return picture(new TransmitterViews(build, channels, Map.of()).view(List.of()));
    }

    private static Picture picture(TransmitterView view) {
        return new Picture(TransmitterChart.svg(view, Layout.WIDE), TransmitterChart.svg(view, Layout.NARROW));
    }
}
