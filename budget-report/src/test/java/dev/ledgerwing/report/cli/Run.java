package dev.ledgerwing.report.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/** One call of the command line, as it would be made at a terminal. */
record Run(int code, String out, String err) {

    static Run of(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine commandLine =
                BudgetReport.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        String[] words = new String[arguments.length];
        for (int index = 0; index < arguments.length; index++) {
            words[index] = arguments[index].toString();
        }
        int code = commandLine.execute(words);
        commandLine.getOut().flush();
        commandLine.getErr().flush();
        return new Run(code, out.toString(), err.toString());
    }
}
