/** What the budgets say about a build, and what lies between two builds, as text and as JSON. */
@NullMarked
package dev.ledgerwing.report.review;

import org.jspecify.annotations.NullMarked;
