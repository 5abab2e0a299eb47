package dev.ledgerwing.web.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.NotNeeded;
import dev.ledgerwing.web.desk.Deed;
import java.util.List;

/** A combination of states that the team has given up. */
record GivenUpRow(String id, String combination, String phases, String by, String why) {

    static List<GivenUpRow> of(Build build, RadioNames names) {
        return build.radio().notNeeded().stream()
                .map(given -> new GivenUpRow(
                        given.id(), combination(given, names), names.phases(given.phases()), given.by(), given.why()))
                .toList();
    }

    private static String combination(NotNeeded given, RadioNames names) {
        return RadioNames.all(given.states(), each -> names.function(each.function()) + " " + each.state());
    }

    /** Asks for the combination again. */
    static Deed takingBack(NotNeeded given, RadioNames names) {
        return Deed.fitting(
                "Asked for again: " + combination(given, names),
                build -> build.withNotNeeded(build.radio().notNeeded().stream()
                        .filter(each -> !each.id().equals(given.id()))
                        .toList()));
    }
}
