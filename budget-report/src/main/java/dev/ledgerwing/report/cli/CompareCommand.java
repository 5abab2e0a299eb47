package dev.ledgerwing.report.cli;

import dev.ledgerwing.core.review.ReviewDelta;
import dev.ledgerwing.report.review.DeltaJson;
import dev.ledgerwing.report.review.DeltaText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what lies between two build files. */
@Command(
        name = "compare",
        description = "Says what the way from one build file to another does to the budgets.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:the two were compared", "2:a file cannot be used"})
@SuppressWarnings("NullAway.Init")
final class CompareCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "a build file")
    private Path before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "another one")
    private Path after;

    @Option(names = "--json", description = "for other programs: figures, findings and impact as JSON")
    private boolean json;

    @Override
    public Integer call() throws Unusable {
        ReviewDelta delta = ReviewDelta.between(
                BuildFiles.read(before).review(), BuildFiles.read(after).review());
        spec.commandLine().getOut().print(json ? DeltaJson.of(delta) : DeltaText.of(delta));
        return BudgetReport.DONE;
    }
}
