/** The demo team, an invented peatland survey group: three airframes with the history of their builds, and a parts table. */
@NullMarked
package dev.ledgerwing.seed;

import org.jspecify.annotations.NullMarked;
