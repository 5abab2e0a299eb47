package dev.ledgerwing.report.channels;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.radio.Coupling;
import dev.ledgerwing.core.radio.RadioStatement;
import dev.ledgerwing.core.radio.explain.Relaxation;
import dev.ledgerwing.core.radio.explain.Relaxations;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.drawing.RadioPictures;
import dev.ledgerwing.report.drawing.TransmitterView;
import dev.ledgerwing.report.drawing.TransmitterView.ChannelMark;
import dev.ledgerwing.report.drawing.TransmitterView.ControlMark;
import dev.ledgerwing.report.drawing.TransmitterView.Said;
import dev.ledgerwing.report.drawing.TransmitterView.Stop;
import dev.ledgerwing.report.sheet.Fact;
import dev.ledgerwing.report.sheet.RadioSummary;
import dev.ledgerwing.report.text.PlainPage;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The channels for people at a terminal. */
public final class ChannelsText {

    private static final int LABEL = 20;
    private static final int VALUE = 26;

    private final ChannelReport report;
    private final RadioStatement radio;
    private final PlainPage page = new PlainPage();

    private ChannelsText(ChannelReport report) {
        this.report = report;
        this.radio = report.radio();
    }

    public static String of(ChannelReport report) {
        return new ChannelsText(report).text();
    }

    private String text() {
        Airframe airframe = report.build().airframe();
        RadioSummary summary = new RadioSummary(report.review());
        page.line(airframe.name() + ", stage " + airframe.stage().title()).blank();
        page.line(headline());
        summary.facts().forEach(this::fact);
        explanation();
        plan();
        couplings();
        findings();
        return page.toString();
    }

    private String headline() {
        return switch (radio.proposed().outcome()) {
            case DOES_NOT_FIT -> "The functions do not fit on the channels.";
            case NOT_KNOWN -> "Whether the functions fit on the channels is not known.";
            case FITS ->
                radio.faults().isEmpty()
                        ? "The functions fit on the channels."
                        : radio.broken().isEmpty()
                                ? "A plan fits; whether the recorded channels do what is asked is not known."
                                : "The recorded channels do not do what is asked, although a plan fits.";
        };
    }

    private void fact(Fact fact) {
        page.hanging(
                PlainPage.padded("  " + fact.label(), LABEL) + PlainPage.padded(fact.value(), VALUE) + "  ",
                fact.note());
    }

    private void explanation() {
        if (!radio.proposed().missing().isEmpty()) {
            page.blank().line(radio.isUndecided() ? "Why" : "To be recorded first");
            radio.proposed().missing().forEach(this::item);
        }
        if (!report.reasons().isEmpty()) {
            page.blank().line("Why");
            report.reasons().forEach(reason -> item(reason.sentence()));
        }
        Relaxations relaxations = report.relaxations();
        if (!relaxations.all().isEmpty()) {
            page.blank().line("Any one of these would make them fit");
            relaxations.all().forEach(this::way);
        } else if (relaxations.noneSuffices()) {
            page.blank().line("No single concession is enough.");
        }
        if (relaxations.undecided()) {
            page.blank()
                    .line("Not of every concession is it known whether it is enough: there are too many combinations.");
        }
    }

    private void way(Relaxation relaxation) {
        item(relaxation.what());
        page.hanging("    ", relaxation.loses());
        String caution = relaxation.caution();
        if (caution != null) {
            page.hanging("    ", caution);
        }
    }

    private void item(String sentence) {
        page.hanging("  – ", sentence);
    }

    private void plan() {
        if (!radio.inForce().isEmpty()) {
            page.blank().line(radio.isRecorded() ? "Channels as recorded" : "Channels, only proposed");
            channels(RadioPictures.controls(radio));
        }
        if (radio.isRecorded() && !radio.faults().isEmpty() && radio.proposed().fits()) {
            page.blank().line("Channels that would do, only proposed");
            channels(RadioPictures.controls(radio.build(), radio.proposed().channels()));
        }
    }

    private void channels(TransmitterView view) {
        view.controls().stream()
                .flatMap(control -> control.channels().stream().map(channel -> Map.entry(channel, control)))
                .sorted(Comparator.comparingInt(each -> each.getKey().number()))
                .forEach(each -> channel(each.getKey(), each.getValue()));
    }

    private void channel(ChannelMark channel, ControlMark control) {
        page.hanging("  " + channel.title() + "  ", control.name());
        for (Stop stop : channel.stops()) {
            page.hanging("    " + PlainPage.padded(stop.label(), 4), told(stop.says()));
        }
        if (!channel.onLoss().isEmpty()) {
            page.hanging("    signal lost: ", told(channel.onLoss()));
        }
        if (!channel.fault().isEmpty()) {
            page.hanging("    ▲ breaks: ", channel.fault());
        }
    }

    private static String told(List<Said> said) {
        return said.stream().map(Said::told).collect(Collectors.joining("; "));
    }

    private void couplings() {
        if (!radio.couplings().isEmpty()) {
            page.blank().line("What sharing takes away");
            radio.couplings().stream().map(Coupling::sentence).forEach(this::item);
        }
    }

    private void findings() {
        List<String> said = report.review().findings(Budget.RADIO).stream()
                .filter(finding -> finding.verdict() == Verdict.BREAKS || finding.verdict() == Verdict.UNKNOWN)
                .map(finding ->
                        (finding.verdict() == Verdict.BREAKS ? "▲ breaks: " : "◇ not known: ") + finding.sentence())
                .toList();
        if (!said.isEmpty()) {
            page.blank().line("Findings");
            said.forEach(this::item);
        }
    }
}
