package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.report.drawing.PowerView.ElementMark;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is drawn, in words for those who point at it or do not see it. */
public final class ElementWords {

    private ElementWords() {}

    /** {@code wire}, {@code current sensor}. */
    public static String of(FeedElement.Kind kind) {
        return switch (kind) {
            case WIRE -> "wire";
            case CONNECTOR -> "plug";
            case FUSE -> "fuse";
            case BREAKER -> "breaker";
            case SWITCH -> "switch";
            case SENSOR -> "current sensor";
            case DIODE -> "diode";
            case REGULATOR -> "regulator";
            case MOTOR_CONTROLLER -> "motor controller";
        };
    }

    /** {@code Main fuse, fuse: 63 % of 10 A, tight}. */
    static String told(ElementMark element) {
        LoadMark load = element.load();
        String share = new LoadBar(new Plate(Layout.WIDE), load).share();
        String verdict = load.verdict() == null ? "" : load.verdict().word();
        String state = switch (element.state()) {
            case LIT -> "";
            case DARK -> "dark";
            case FAILED -> "failed: " + element.failure();
        };
        String figures =
                share.isEmpty() || load.rating().isEmpty() ? share + load.rating() : share + " of " + load.rating();
        String said = Stream.of(figures, element.state() == State.LIT ? verdict : "", state)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
        return element.name() + ", " + of(element.kind()) + (said.isEmpty() ? "" : ": " + said);
    }
}
