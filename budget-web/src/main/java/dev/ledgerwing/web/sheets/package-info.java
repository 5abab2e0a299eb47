/** The printable sheets of an airframe, made by budget-report from the record of any revision. */
@NullMarked
package dev.ledgerwing.web.sheets;

import org.jspecify.annotations.NullMarked;
