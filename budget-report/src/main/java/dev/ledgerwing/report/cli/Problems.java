package dev.ledgerwing.report.cli;

import dev.ledgerwing.report.text.PrintableText;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Says what went wrong on standard error: one line for each problem, no stack trace, and exit code 2. */
final class Problems {

    private static final String LEAD = "budget-report: ";

    private Problems() {}

    static int ofExecution(Exception problem, CommandLine command, ParseResult arguments) {
        return say(command, problem instanceof Unusable unusable ? unusable.problems() : List.of(sentence(problem)));
    }

    static int ofParameters(ParameterException problem, String[] arguments) {
        CommandLine command = problem.getCommandLine();
        return say(
                command,
                List.of(String.valueOf(problem.getMessage()) + " (see "
                        + command.getCommandSpec().qualifiedName() + " --help)"));
    }

    private static int say(CommandLine command, List<String> problems) {
        problems.forEach(problem -> command.getErr().print(LEAD + oneLine(problem) + "\n"));
        command.getErr().flush();
        return BudgetReport.UNUSABLE;
    }

    private static String oneLine(String problem) {
        return PrintableText.of(problem.replaceAll("\\s*\\R\\s*", " "));
    }

    private static String sentence(Exception problem) {
        return problem instanceof IOException trouble
                ? sentence(trouble)
                : "an error of this program, not of yours: " + problem;
    }

    /** What the system says about a file, in words. */
    static String sentence(IOException trouble) {
        if (trouble instanceof FileSystemException file) {
            return file.getFile() + ": " + reason(file);
        }
        return String.valueOf(trouble.getMessage());
    }

    private static String reason(FileSystemException trouble) {
        if (trouble instanceof NoSuchFileException) {
            return "there is no such file";
        }
        if (trouble instanceof AccessDeniedException) {
            return "access is not allowed";
        }
        return trouble.getReason() == null ? "cannot be read or written" : trouble.getReason();
    }
}
