/** The command line: answers on standard output, problems on standard error, one line each. */
@NullMarked
package dev.ledgerwing.report.cli;

import org.jspecify.annotations.NullMarked;
