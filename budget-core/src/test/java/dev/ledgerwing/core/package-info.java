/** Records to test with, and the rules that hold the packages apart. */
@NullMarked
package dev.ledgerwing.core;

import org.jspecify.annotations.NullMarked;
