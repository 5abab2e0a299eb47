/** Which output goes to which bank, exactly. */
@NullMarked
package dev.ledgerwing.core.outputs.bank;

import org.jspecify.annotations.NullMarked;
