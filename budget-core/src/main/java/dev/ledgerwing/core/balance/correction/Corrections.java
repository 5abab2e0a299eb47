package dev.ledgerwing.core.balance.correction;

import dev.ledgerwing.core.balance.BalanceStatement;
import dev.ledgerwing.core.quantity.Figures;
import java.util.List;
import java.util.Optional;

/**
 * What can be done about a balance that is not right.
 *
 * @param statement the balance as it stands
 * @param now where each flight case balances, and where it is aimed for; empty while there is no band
 * @param offers cheapest in grams first; empty where nothing is wrong
 */
public record Corrections(BalanceStatement statement, List<Aim> now, List<Correction> offers) {

    public Corrections {
        now = List.copyOf(now);
        offers = List.copyOf(offers);
    }

    /** Whether some flight case is out of its band, or too near a limit to be sure. */
    public boolean isNeeded() {
        return now.stream().anyMatch(Aim::isWrong);
    }

    /** The offer that a form sent back; empty when it is not on offer. */
    public Optional<Correction> offer(String key) {
        return offers.stream().filter(offer -> offer.key().equals(key)).findFirst();
    }

    /** What a builder has to know of the offers, or why there are none, in sentences. */
    public List<String> remarks(Figures figures) {
        return isNeeded() ? new CorrectionRemarks(this, figures).all() : List.of();
    }
}
