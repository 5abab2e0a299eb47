/** The members of the team: who they are, how they sign in, which units they read. */
@NullMarked
package dev.ledgerwing.web.team;

import org.jspecify.annotations.NullMarked;
