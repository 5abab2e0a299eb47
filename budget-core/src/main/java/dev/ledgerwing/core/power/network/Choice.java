package dev.ledgerwing.core.power.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Which feed carries each rail, by their codes; a rail that is not named is dark. */
record Choice(Map<String, Way> carriers) {

    /** More of them are never looked at. */
    private static final int MOST = 256;

    /** Choices times {@link #most its factors} that are solved at the utmost: about half a second. */
    private static final double MOST_WORK = 3_000_000;

    Choice {
        carriers = Map.copyOf(carriers);
    }

    @Nullable
    Way carrier(String rail) {
        return carriers.get(rail);
    }

    /**
     * How many choices are looked at: {@value #MOST}, and fewer in a large supply, for each of them is solved on every occasion, with every
     * failure, for all that is in it.
     */
    static int most(int occasions, int failures, int size) {
        double workOfOne = Math.max(1.0, (double) occasions * failures * size);
        return (int) Math.max(1, Math.min(MOST, MOST_WORK / workOfOne));
    }

    /**
     * Every choice, earlier feeds before later ones. Once there would be more than {@code most} of them, the rails that are left are
     * carried by their first feeds.
     *
     * @param usable feeds of each rail, from the sources outwards
     */
    static List<Choice> all(Map<String, List<Way>> usable, int most) {
        List<Map<String, Way>> choices = List.of(Map.of());
        for (Map.Entry<String, List<Way>> rail : usable.entrySet()) {
            List<Way> ways = rail.getValue();
            List<Way> tried = choices.size() * ways.size() <= most ? ways : ways.subList(0, 1);
            if (!ways.isEmpty()) {
                choices = each(choices, rail.getKey(), tried);
            }
        }
        return choices.stream().map(Choice::new).toList();
    }

    private static List<Map<String, Way>> each(List<Map<String, Way>> choices, String rail, List<Way> ways) {
        List<Map<String, Way>> more = new ArrayList<>();
        for (Map<String, Way> choice : choices) {
            for (Way way : ways) {
                Map<String, Way> longer = new HashMap<>(choice);
                longer.put(rail, way);
                more.add(longer);
            }
        }
        return more;
    }

    /** Whether {@link #all} leaves some out. */
    static boolean isTooMany(Map<String, List<Way>> usable, int most) {
        double product = 1;
        for (List<Way> ways : usable.values()) {
            product *= Math.max(1, ways.size());
        }
        return product > most;
    }
}
