package dev.ledgerwing.core.balance;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.stream.Stream;

/** Bookings of which nobody knows where they sit. */
record BookingRule(BalanceStatement statement, Figures figures) {

    Stream<Finding> findings() {
        return statement.design().booked().stream()
                .filter(booked -> !booked.isPlaced() && booked.sum().mass().mg() != 0)
                .map(this::finding);
    }

    private Finding finding(BookedMass booked) {
        String code = booked.assembly();
        String whole = code == null
                ? ""
                : " of " + statement.build().assembly(code).map(Assembly::name).orElse(code);
        String sentence = "The scales did not say where the booked "
                + figures.mass(booked.booking().mass()) + whole
                + " sits: it is taken to sit at the CG of what was weighed and makes the balance less sure. Weigh on two or"
                + " three supports to learn it.";
        return BalanceAgainst.nothing("balance.booking", "Booking" + whole).finding(Verdict.TIGHT, sentence);
    }
}
