/** What a budget says: verdicts, findings and the remedies that go with them. */
@NullMarked
package dev.ledgerwing.core.verdict;

import org.jspecify.annotations.NullMarked;
