/** The history of an airframe: its revisions, what each did, any two compared, and going back to one. */
@NullMarked
package dev.ledgerwing.web.history;

import org.jspecify.annotations.NullMarked;
