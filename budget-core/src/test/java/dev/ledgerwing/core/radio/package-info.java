@NullMarked
package dev.ledgerwing.core.radio;

import org.jspecify.annotations.NullMarked;
