/** What the scales say of an airframe or an assembly, held against the ledger, and what is booked of the difference. */
@NullMarked
package dev.ledgerwing.core.balance.weighing;

import org.jspecify.annotations.NullMarked;
