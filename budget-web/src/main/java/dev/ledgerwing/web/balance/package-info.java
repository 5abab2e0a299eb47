/** The balance page: where an airframe balances in every load case, what it is judged by, and what would put it right. */
@NullMarked
package dev.ledgerwing.web.balance;

import org.jspecify.annotations.NullMarked;
