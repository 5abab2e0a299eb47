/** Weighings: what the scales say of the airframe or of one assembly, held against the ledger, recorded and booked. */
@NullMarked
package dev.ledgerwing.web.weighing;

import org.jspecify.annotations.NullMarked;
