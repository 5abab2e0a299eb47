package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.review.BuildReview;
import dev.ledgerwing.core.review.ImpactPart;
import dev.ledgerwing.core.review.ReviewDelta;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What importing a table in one way would do, told before it is done.
 *
 * @param impact what the budgets would say
 * @param newAssemblies names of the assemblies that it would make because the table names them
 * @param obstacle why it is not possible; null = it is
 */
record Effect(
        Placing placing,
        List<ImpactPart> impact,
        List<String> newAssemblies,
        @Nullable String obstacle) {

    static Effect of(TableDeed deed, BuildReview before, Supplier<String> newIds) {
        return deed.obstacle(before.build())
                .map(obstacle -> new Effect(deed.placing(), List.of(), List.of(), obstacle))
                .orElseGet(() -> told(deed, before, newIds));
    }

    private static Effect told(TableDeed deed, BuildReview before, Supplier<String> newIds) {
        Build base = before.build();
        Build after = deed.into(base, newIds);
        ReviewDelta delta = ReviewDelta.between(before, BuildReview.of(after, before.units()));
        Set<String> named = deed.reading().parts().stream()
                .flatMap(part -> Optional.ofNullable(part.assembly()).stream())
                .collect(Collectors.toSet());
        List<String> made = after.assemblies().stream()
                .filter(assembly -> base.assembly(assembly.code()).isEmpty())
                .map(Assembly::name)
                .filter(named::contains)
                .toList();
        return new Effect(deed.placing(), delta.impact(), made, null);
    }

    public boolean isPossible() {
        return obstacle == null;
    }
}
