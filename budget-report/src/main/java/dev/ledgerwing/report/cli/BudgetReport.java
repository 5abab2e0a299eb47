package dev.ledgerwing.report.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Reads build files and parts tables without a server. */
@Command(
        name = "budget-report",
        description = "Says what the budgets of a build file hold, and prints its sheets.",
        subcommands = {
            ReviewCommand.class,
            SheetsCommand.class,
            CompareCommand.class,
            ChannelsCommand.class,
            TableCommand.class
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        usageHelpAutoWidth = false)
public final class BudgetReport {

    /** Nothing breaks, or what was asked for is done. */
    static final int DONE = 0;

    /** Something breaks. */
    static final int BREAKS = 1;

    /** A file or an option cannot be used. */
    static final int UNUSABLE = 2;

    private BudgetReport() {}

    public static void main(String[] arguments) {
        System.setProperty("java.awt.headless", "true");
        CommandLine commandLine = commandLine()
                .setOut(utf8(new FileOutputStream(FileDescriptor.out)))
                .setErr(utf8(new FileOutputStream(FileDescriptor.err)));
        int code = commandLine.execute(arguments);
        commandLine.getOut().flush();
        System.exit(code);
    }

    /** UTF-8 whatever the machine is set to, so that a redirected answer is the same everywhere. */
    private static PrintWriter utf8(FileOutputStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    static CommandLine commandLine() {
        return new CommandLine(new BudgetReport())
                .setExecutionExceptionHandler(Problems::ofExecution)
                .setParameterExceptionHandler(Problems::ofParameters);
    }
}
