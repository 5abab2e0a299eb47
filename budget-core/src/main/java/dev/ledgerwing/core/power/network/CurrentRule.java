package dev.ledgerwing.core.power.network;

import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.quantity.Figures;
import dev.ledgerwing.core.verdict.Finding;
import dev.ledgerwing.core.verdict.Verdict;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whether every source and every element can carry what hangs on it, each feed carrying its rail alone. */
record CurrentRule(NetworkStatement statement) {

    static final String SOURCE = "power.source";
    static final String ELEMENT = "power.element";
    static final String CARRIES = "power.carries";
    static final String COLLAPSE = "power.collapse";

    Stream<Finding> findings() {
        return Stream.of(
                        statement.collapses().stream().map(CurrentRule::collapse),
                        statement.sources().stream().filter(SourceLoad::isUsed).flatMap(each -> source(each).stream()),
                        statement.elements().stream().flatMap(each -> element(each).stream()),
                        carries().stream())
                .flatMap(stream -> stream);
    }

    private static Finding collapse(Collapse collapse) {
        NetworkSolution solution = collapse.solution();
        String level = solution.level() == LoadLevel.PEAK ? "at peak load" : "at continuous load";
        return Against.nothing(COLLAPSE, collapse.source().name())
                .finding(
                        Verdict.BREAKS,
                        "The supply collapses: "
                                + PowerWords.quoted(collapse.source().name()) + " cannot give what is"
                                + " asked of it " + level + " ("
                                + solution.occasion().name() + ", packs "
                                + solution.charge().word()
                                + "); the voltage breaks down before the current is reached.");
    }

    private static Optional<Finding> source(SourceLoad load) {
        boolean peak = load.isPeakWorse();
        Held held = new Held(
                PowerWords.quoted(load.source().name()) + " gives",
                peak ? load.peakA() : load.continuousA(),
                peak ? load.peakRatingA() : load.ratingA(),
                peak,
                load.when());
        if (load.ratingA() == null || load.peakRatingA() == null) {
            return Optional.of(held.against(SOURCE, load.source().name())
                    .finding(
                            worseThanUnknown(load.verdict()),
                            held.unrated(
                                    load.ratingA() == null
                                            ? "what it may give is not recorded"
                                            : "what it may give for moments is not recorded")));
        }
        return held.finding(SOURCE, load.source().name(), load.verdict(), load.reservePercent());
    }

    private static Optional<Finding> element(ElementLoad load) {
        boolean peak = load.isPeakWorse();
        FeedElement element = load.element();
        Held held = new Held(
                PowerWords.quoted(load.name()) + each(element) + " in "
                        + PowerWords.quoted(load.feed().name()) + " carries",
                peak ? load.peakA() : load.continuousA(),
                peak ? load.rating().peakA() : load.rating().continuousA(),
                peak,
                load.when());
        if (load.rating().continuousA() == null) {
            return Optional.of(held.against(ELEMENT, load.name())
                    .finding(
                            worseThanUnknown(load.verdict()),
                            held.unrated(load.rating().words())));
        }
        return held.finding(ELEMENT, load.name(), load.verdict(), load.reservePercent());
    }

    private static Verdict worseThanUnknown(Verdict verdict) {
        return verdict.worseOf(Verdict.UNKNOWN);
    }

    private static String each(FeedElement element) {
        return element.count() == 1 ? "" : " (one of " + element.count() + ")";
    }

    /** Says once that all is well, and how near the nearest is; not where some of the ways to feed it were left out. */
    private Optional<Finding> carries() {
        boolean isWell = !statement.isCutShort()
                && !statement.elements().isEmpty()
                && statement.elements().stream().allMatch(each -> each.verdict() == Verdict.HOLDS);
        return statement.elements().stream()
                .filter(each -> isWell && each.loadPercent() != null)
                .max(Comparator.comparingDouble(CurrentRule::percent))
                .map(each -> Against.percent(CARRIES, "Feeds", percent(each), 100)
                        .finding(
                                Verdict.HOLDS,
                                "Every element carries what hangs on it with its reserve free; "
                                        + PowerWords.quoted(each.name()) + " is nearest to its rating, at "
                                        + Figures.percent(percent(each)) + "."));
    }

    private static double percent(ElementLoad element) {
        Double percent = element.loadPercent();
        return percent == null ? 0 : percent;
    }

    /** A current held against a rating, in words. */
    private record Held(
            String who, double amperes, @Nullable Double ratingA, boolean isPeak, String when) {

        Against against(String code, String subject) {
            return Against.amperes(code, subject, amperes, ratingA);
        }

        String unrated(String why) {
            return carried() + ", and " + lower(why) + ".";
        }

        private static String lower(String why) {
            return why.substring(0, 1).toLowerCase(Locale.ROOT) + why.substring(1);
        }

        private String carried() {
            return who + " " + (isPeak ? "peaks of " : "") + PowerWords.amperes(amperes)
                    + (when.isEmpty() ? "" : " (" + when + ")");
        }

        /** Nothing where it holds; nor where it is not known for a reason that is said elsewhere. */
        Optional<Finding> finding(String code, String subject, Verdict verdict, double reservePercent) {
            if (ratingA == null || verdict == Verdict.HOLDS || verdict == Verdict.UNKNOWN) {
                return Optional.empty();
            }
            String percent = Figures.percent(100 * amperes / ratingA);
            String sentence = verdict == Verdict.BREAKS
                    ? carried() + ", more than the " + PowerWords.amperes(ratingA) + " it may: " + percent + "."
                    : carried() + ", " + percent + " of " + PowerWords.amperes(ratingA)
                            + ": short of the wanted reserve of " + Figures.percent(reservePercent) + ".";
            return Optional.of(against(code, subject).finding(verdict, sentence));
        }
    }
}
