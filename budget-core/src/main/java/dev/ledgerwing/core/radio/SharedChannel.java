package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.Channel;
import dev.ledgerwing.core.build.Channel.Carried;
import dev.ledgerwing.core.build.RadioFunction;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** A channel whose control sets several switched functions at once. */
record SharedChannel(int number, List<Member> members) {

    /**
     * A function on it.
     *
     * @param states its states by position of the control
     */
    record Member(RadioFunction function, List<String> states) {}

    SharedChannel {
        members = List.copyOf(members);
    }

    /** Empty where fewer than two switched functions that need the channel have their states on it. */
    static Optional<SharedChannel> of(Channel channel, List<RadioFunction> functions) {
        List<Member> members = new ArrayList<>();
        for (Carried carried : channel.carries()) {
            functions.stream()
                    .filter(function -> function.code().equals(carried.function())
                            && function.needsChannel()
                            && !carried.states().isEmpty())
                    .forEach(function -> members.add(new Member(function, carried.states())));
        }
        return members.size() < 2 ? Optional.empty() : Optional.of(new SharedChannel(channel.number(), members));
    }

    /** Positions at which no state does harm in a phase. */
    BitSet harmlessIn(String phase) {
        BitSet harmless = new BitSet();
        harmless.set(0, members.get(0).states().size());
        for (Member member : members) {
            for (int at = 0; at < member.states().size(); at++) {
                if (!member.function().demandIn(phase).allows(member.states().get(at))) {
                    harmless.clear(at);
                }
            }
        }
        return harmless;
    }
}
