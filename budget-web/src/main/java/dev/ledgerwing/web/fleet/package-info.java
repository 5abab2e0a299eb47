/** The fleet: every airframe with the headlines of its budgets, and opening a new one. */
@NullMarked
package dev.ledgerwing.web.fleet;

import org.jspecify.annotations.NullMarked;
