package dev.ledgerwing.report.sheet;

/** A sheet that can be printed: a template and what fills it. */
public sealed interface PrintedSheet permits BuildSheet, BalanceSheet, PowerSheet, RadioSheet, OutputSheet {

    /** Name of the template that it fills. */
    String template();
}
