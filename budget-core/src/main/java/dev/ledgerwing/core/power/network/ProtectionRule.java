package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.Feed;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Kind;
import dev.ledgerwing.core.build.WireRun;
import dev.ledgerwing.core.power.wire.WireProtection;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Whether every fuse and breaker opens before the wires behind it carry more than they may: FAA AC 43.13-1B paragraph 11-48, and as a
 * check beside it {@link WireProtection table 11-3}. It protects the wires up to the next protector; behind a regulator the current is
 * another one.
 */
record ProtectionRule(NetworkStatement statement) {

    static final String WIRE = "power.fuse-and-wire";

    /** A protector and a wire that it has to protect. */
    private record Pair(FeedElement protector, ElementLoad wire) {}

    Stream<Finding> findings() {
        return statement.elements().stream()
                .filter(each -> isProtector(each.element()) && each.element().ratingA() != null)
                .flatMap(each -> behind(each).stream().map(wire -> new Pair(each.element(), wire)))
                .flatMap(ProtectionRule::judge);
    }

    private static boolean isProtector(FeedElement element) {
        return element.kind() == Kind.FUSE || element.kind() == Kind.BREAKER;
    }

    private List<ElementLoad> behind(ElementLoad protector) {
        List<ElementLoad> wires = new ArrayList<>();
        walk(protector.feed(), protector.at().index() + 1, wires, new HashSet<>());
        return wires;
    }

    private void walk(Feed feed, int from, List<ElementLoad> wires, Set<String> walked) {
        for (int i = from; i < feed.elements().size(); i++) {
            FeedElement element = feed.elements().get(i);
            if (isProtector(element) || element.kind() == Kind.REGULATOR) {
                return;
            }
            if (element.kind() == Kind.WIRE) {
                statement.element(new ElementAt(feed.code(), i)).ifPresent(wires::add);
            }
        }
        if (walked.add(feed.to())) {
            statement.network().feedsFrom(feed.to()).forEach(next -> walk(next, 0, wires, walked));
        }
    }

    private static Stream<Finding> judge(Pair pair) {
        Double wireA = wireA(pair.wire());
        double fuseA = fuseA(pair.protector());
        String fuse = PowerWords.quoted(pair.protector().name()) + " of " + PowerWords.amperes(fuseA);
        String wire = PowerWords.quoted(pair.wire().name());
        if (wireA != null && fuseA > wireA + 1e-9) {
            return Stream.of(Against.amperes(WIRE, pair.wire().name(), fuseA, wireA)
                    .finding(
                            Verdict.BREAKS,
                            fuse + " lets more through than the " + PowerWords.amperes(wireA) + " that " + wire
                                    + " behind it may carry.",
                            "A smaller " + PowerWords.word(pair.protector().kind()) + ", or a thicker wire."));
        }
        Double tableA = tableA(pair.protector().kind(), pair.wire().element().wire());
        if (tableA != null && fuseA > tableA * pair.wire().element().count() + 1e-9) {
            return Stream.of(Against.amperes(WIRE, pair.wire().name(), fuseA, tableA)
                    .finding(
                            Verdict.TIGHT,
                            fuse + " is more than the " + PowerWords.amperes(tableA) + " that " + WireProtection.SOURCE
                                    + " gives for " + wire + " behind it."));
        }
        return Stream.empty();
    }

    /** Those side by side take all their ratings together to open. */
    private static double fuseA(FeedElement protector) {
        Double ratingA = protector.ratingA();
        return ratingA == null ? 0 : ratingA * protector.count();
    }

    /** All wires side by side together; null = not known, which is said where their load is judged. */
    private static @Nullable Double wireA(ElementLoad wire) {
        Double ofOne = wire.rating().continuousA();
        return ofOne == null
                ? null
                : Double.valueOf(
                        ofOne / Shares.ofOne(wire.element(), wire.element().count()));
    }

    private static @Nullable Double tableA(Kind kind, @Nullable WireRun run) {
        if (run == null) {
            return null;
        }
        WireProtection protection = WireProtection.of(run.awg());
        return kind == Kind.FUSE ? protection.fuseA() : protection.breakerA();
    }
}
