/** Charts as drawings that stand in a page: no script, no style attribute, one ink. */
@NullMarked
package dev.ledgerwing.report.chart;

import org.jspecify.annotations.NullMarked;
