package dev.ledgerwing.core.balance.weighing;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.WeighIn;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** The order of weigh-ins: by date, of two on one day the later in the record is the newer. */
final class WeighInOrder {

    private WeighInOrder() {}

    static List<WeighIn> newestFirst(List<WeighIn> weighIns) {
        List<WeighIn> all = new ArrayList<>(weighIns);
        all.sort(Comparator.comparing(WeighIn::date));
        Collections.reverse(all);
        return all;
    }

    /** Whether nothing newer was said of the same assembly, or of the whole airframe; one that is not in the record is. */
    static boolean isNewest(Build build, WeighIn weighIn) {
        if (build.weighIns().stream().noneMatch(each -> each.id().equals(weighIn.id()))) {
            return true;
        }
        return newestFirst(build.weighIns()).stream()
                .filter(each -> Objects.equals(each.assembly(), weighIn.assembly()))
                .findFirst()
                .map(newest -> newest.id().equals(weighIn.id()))
                .orElse(true);
    }
}
