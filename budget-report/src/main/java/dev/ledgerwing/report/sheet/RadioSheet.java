package dev.ledgerwing.report.sheet;

import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.report.drawing.Picture;
import dev.ledgerwing.report.drawing.RadioPictures;
import dev.ledgerwing.report.drawing.RadioWords;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The radio sheet, ready to be printed: nothing in it needs computing. What is not known says so.
 *
 * @param warning why nobody may set up a transmitter by it; null = it can be worked from
 * @param otherwise functions that no channel commands
 * @param frame the arithmetic of a train of pulses; none = the link sends none
 */
public record RadioSheet(
        SheetTitle title,
        VerdictMark radio,
        @Nullable SheetWarning warning,
        List<Fact> facts,
        Picture transmitter,
        List<ChannelEntry> channels,
        List<String> otherwise,
        List<LossEntry> onLoss,
        List<SharedEntry> shared,
        List<GivenUpEntry> givenUp,
        Picture grid,
        List<Fact> frame,
        List<FindingEntry> findings)
        implements PrintedSheet {

    public RadioSheet {
        facts = List.copyOf(facts);
        channels = List.copyOf(channels);
        otherwise = List.copyOf(otherwise);
        onLoss = List.copyOf(onLoss);
        shared = List.copyOf(shared);
        givenUp = List.copyOf(givenUp);
        frame = List.copyOf(frame);
        findings = List.copyOf(findings);
    }

    /** The sheet of a reviewed build. */
    public static RadioSheet of(BuildReview review, SheetHead head) {
        RadioStatement radio = review.radio();
        RadioSummary summary = new RadioSummary(review);
        return new RadioSheet(
                SheetTitle.of(review.build().airframe(), head),
                summary.verdict(),
                new RadioWarning(review).warning(),
                summary.facts(),
                RadioPictures.transmitter(radio),
                ChannelEntry.of(RadioPictures.controls(radio)),
                otherwise(radio),
                LossEntry.of(radio),
                SharedEntry.of(radio),
                GivenUpEntry.of(review.build()),
                RadioPictures.grid(radio),
                summary.frame(),
                review.findings(Budget.RADIO).stream().map(FindingEntry::of).toList());
    }

    private static List<String> otherwise(RadioStatement radio) {
        return radio.build().radio().functions().stream()
                .filter(function -> !function.needsChannel())
                .map(RadioWords::told)
                .toList();
    }

    @Override
    public String template() {
        return "sheets/radio";
    }
}
