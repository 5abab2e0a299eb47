package dev.ledgerwing.report.drawing;

import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.report.drawing.PowerView.ElementMark;
import dev.ledgerwing.report.drawing.PowerView.LoadMark;
import dev.ledgerwing.report.drawing.PowerView.State;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is drawn, in words for those who point at it or do not see it. */
final class ElementWords {

    private ElementWords() {}

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
        boolean lit = element.state() == State.LIT;
        String of = share.isEmpty() || load.rating().isEmpty() ? "" : " of ";
        String said = Stream.of(lit ? share + of + load.rating() : "", lit ? verdict : "", state)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
        return element.name() + ", " + PowerWords.word(element.kind()) + (said.isEmpty() ? "" : ": " + said);
    }
}
