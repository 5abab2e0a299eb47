package dev.ledgerwing.core.radio.plan;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The groups that the record has: a plan keeps them where they are as good as any. */
final class RecordedGroups {

    private final CoverTask task;
    private final List<BitSet> groups = new ArrayList<>();

    private RecordedGroups(CoverTask task, List<Channel> channels, List<RadioFunction> switched) {
        this.task = task;
        for (Channel channel : channels) {
            BitSet group = new BitSet();
            for (int f = 0; f < switched.size(); f++) {
                group.set(f, channel.functions().contains(switched.get(f).code()));
            }
            group.and(task.functions());
            if (!group.isEmpty()) {
                groups.add(group);
            }
        }
    }

    /** The recorded groups, if they cost no more than the best ones and are carried; else the best ones. */
    static List<BitSet> ifAsGood(CoverTask task, ChannelProblem problem, List<BitSet> best) {
        RecordedGroups recorded = new RecordedGroups(task, problem.radio().channels(), problem.switched());
        boolean asGood = recorded.groups.size() == best.size()
                && recorded.isSplit()
                && recorded.weight(recorded.groups) == recorded.weight(best)
                && recorded.isCarried();
        return asGood ? recorded.groups : best;
    }

    private boolean isSplit() {
        BitSet all = new BitSet();
        groups.forEach(all::or);
        int members = groups.stream().mapToInt(BitSet::cardinality).sum();
        return all.equals(task.functions()) && members == all.cardinality();
    }

    private int weight(List<BitSet> split) {
        return split.stream()
                .mapToInt(group -> (group.cardinality() - 1)
                        * group.stream().map(this::weight).sum())
                .sum();
    }

    private int weight(int function) {
        return ShareBound.weight(task.table().radio().function(function));
    }

    private boolean isCarried() {
        List<Integer> kinds = new ArrayList<>(task.alone());
        groups.forEach(group -> kinds.add(task.table().kinds(group)));
        return task.stock().serves(kinds);
    }
}
