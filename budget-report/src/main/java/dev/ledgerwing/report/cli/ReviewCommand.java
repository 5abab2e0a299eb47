package dev.ledgerwing.report.cli;

import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.verdict.Verdict;
import dev.ledgerwing.report.review.ReviewJson;
import dev.ledgerwing.report.review.ReviewText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether the budgets of a build file hold. */
@Command(
        name = "review",
        description = "Says whether the budgets of a build file hold.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:nothing breaks", "1:something breaks", "2:the file cannot be used"})
@SuppressWarnings("NullAway.Init")
final class ReviewCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "a build file")
    private Path file;

    @Option(names = "--json", description = "for other programs: figures, verdicts and findings as JSON")
    private boolean json;

    @Override
    public Integer call() throws Unusable {
        BuildReview review = BuildFiles.read(file).review();
        spec.commandLine().getOut().print(json ? ReviewJson.of(review) : ReviewText.of(review));
        return review.verdict() == Verdict.BREAKS ? BudgetReport.BREAKS : BudgetReport.DONE;
    }
}
