package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The numbers of the channels: as many functions as possible keep the one they have, the others get the lowest free ones. Of very
 * many claims not all are tried: the plan is as good, but fewer may stay where they are.
 */
final class Numbering {

    private static final int MOST_STEPS = 100_000;

    private final List<Draft> drafts;
    private final AtomicInteger steps = new AtomicInteger();
    private final List<Map<Integer, Integer>> claims = new ArrayList<>();
    private final int[] now;
    private final int[] best;
    private final AtomicInteger mostKept = new AtomicInteger(-1);

    private Numbering(List<Draft> drafts, List<Channel> recorded, int channels) {
        this.drafts = drafts;
        now = new int[drafts.size()];
        best = new int[drafts.size()];
        for (Draft draft : drafts) {
            claims.add(
                    draft.pin() == null
                            ? claims(draft, recorded, channels)
                            : Map.of(draft.pin().number(), 0));
        }
    }

    /** The number of each draft, in their order. */
    static int[] of(List<Draft> drafts, List<Channel> recorded, int channels) {
        Numbering numbering = new Numbering(drafts, recorded, channels);
        numbering.choose(0, 0);
        return numbering.filled();
    }

    private static Map<Integer, Integer> claims(Draft draft, List<Channel> recorded, int channels) {
        Map<Integer, Integer> claims = new TreeMap<>(); // by the number, which sorts what is equally good below
        for (Channel channel : recorded) {
            long here = draft.functions().stream()
                    .map(RadioFunction::code)
                    .filter(channel.functions()::contains)
                    .count();
            if (here > 0 && !channel.pinned() && channel.number() <= channels) {
                claims.merge(channel.number(), (int) here, Math::max);
            }
        }
        Map<Integer, Integer> bestFirst = new LinkedHashMap<>();
        claims.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed())
                .forEach(claim -> bestFirst.put(claim.getKey(), claim.getValue()));
        return bestFirst;
    }

    private void choose(int draft, int kept) {
        if (draft == drafts.size()) {
            if (kept > mostKept.get()) {
                mostKept.set(kept);
                System.arraycopy(now, 0, best, 0, best.length);
            }
            return;
        }
        boolean enough = mostKept.get() >= 0 && steps.incrementAndGet() > MOST_STEPS;
        if (enough || kept + hoped(draft) <= mostKept.get()) {
            return;
        }
        claims.get(draft).forEach((number, functions) -> {
            if (Arrays.stream(now, 0, draft).noneMatch(taken -> taken == number)) {
                now[draft] = number;
                choose(draft + 1, kept + functions);
            }
        });
        now[draft] = 0;
        if (drafts.get(draft).pin() == null) {
            choose(draft + 1, kept);
        }
    }

    private int hoped(int from) {
        return claims.subList(from, claims.size()).stream()
                .mapToInt(claim ->
                        claim.values().stream().mapToInt(each -> each).max().orElse(0))
                .sum();
    }

    private int[] filled() {
        int[] numbers = best.clone();
        int free = 1;
        for (int i = 0; i < numbers.length; i++) {
            if (numbers[i] == 0) {
                while (taken(free)) {
                    free++;
                }
                numbers[i] = free++;
            }
        }
        return numbers;
    }

    private boolean taken(int number) {
        return Arrays.stream(best).anyMatch(each -> each == number);
    }
}
