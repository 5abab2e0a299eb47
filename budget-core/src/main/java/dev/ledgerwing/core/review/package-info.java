/** The review of a whole build: every budget's figures, verdicts and findings, and what a change does to them. */
@NullMarked
package dev.ledgerwing.core.review;

import org.jspecify.annotations.NullMarked;
