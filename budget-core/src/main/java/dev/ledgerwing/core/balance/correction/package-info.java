/** What puts the balance right: corrections that land every flight case in its band, placement rules, and where to strap the packs. */
@NullMarked
package dev.ledgerwing.core.balance.correction;

import org.jspecify.annotations.NullMarked;
