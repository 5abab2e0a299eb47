package dev.ledgerwing.report.cli;

import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Budget;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.channels.ChannelReport;
import dev.ledgerwing.report.channels.ChannelsJson;
import dev.ledgerwing.report.channels.ChannelsText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the plan of the channels of a build file, or why there is none. */
@Command(
        name = "channels",
        description =
                "Prints which channel commands what, position by position; where the functions do not fit, why, and each single concession by which they would.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:nothing of the radio breaks",
            "1:it does not fit, or something else of the radio breaks",
            "2:the file cannot be used"
        })
@SuppressWarnings("NullAway.Init")
final class ChannelsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "a build file")
    private Path file;

    @Option(names = "--json", description = "for other programs: plan, faults, reasons and concessions as JSON")
    private boolean json;

    @Override
    public Integer call() throws Unusable {
        BuildReview review = BuildFiles.read(file).review();
        ChannelReport report = ChannelReport.of(review);
        spec.commandLine().getOut().print(json ? ChannelsJson.of(report) : ChannelsText.of(report));
        return review.verdict(Budget.RADIO) == Verdict.BREAKS ? BudgetReport.BREAKS : BudgetReport.DONE;
    }
}
