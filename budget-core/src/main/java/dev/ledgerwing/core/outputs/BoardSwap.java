package dev.ledgerwing.core.outputs;

import dev.ledgerwing.core.build.Basis;
import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad;
import dev.ledgerwing.core.build.FitState;
import dev.ledgerwing.core.build.FittedBoard;
import dev.ledgerwing.core.build.LineMass;
import dev.ledgerwing.core.build.Nature;
import dev.ledgerwing.core.build.PartDeeds;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.build.Supply;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Puts another flight controller aboard, in the outputs and in the ledger at once. */
public final class BoardSwap {

    private BoardSwap() {}

    /**
     * Chooses a candidate. Where the ledger names the part it is, that part takes the candidate's name, mass and current, and is
     * planned again, so that every other budget answers; the recorded outputs keep their numbers.
     *
     * @throws IllegalArgumentException when there is no such candidate
     */
    public static Build apply(Build build, String code) {
        Board board = build.outputs().boards().stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no flight controller “" + code + "”"));
        String part = build.outputs().fitted().part();
        Build chosen = build.withFittedBoard(new FittedBoard(code, part));
        boolean sameBoard = code.equals(build.outputs().fitted().board());
        return part == null || sameBoard
                ? chosen
                : build.line(part)
                        .map(line -> PartDeeds.changed(chosen, inItsPlace(line, board), Nature.FITTED))
                        .orElse(chosen);
    }

    private static PartLine inItsPlace(PartLine line, Board board) {
        LineMass mass = board.unitMass() == null ? LineMass.notKnown() : LineMass.of(board.unitMass(), Basis.CATALOGUE);
        return new PartLine(
                line.id(),
                line.assembly(),
                board.name(),
                line.category(),
                line.quantity(),
                mass,
                line.place(),
                FitState.PLANNED,
                Supply.NONE,
                line.note(),
                line.serves(),
                loads(line.electrical(), board),
                line.needs());
    }

    /** The first load is the board's own; without any it hangs on no rail yet, which the power budget says. */
    private static List<ElectricalLoad> loads(List<ElectricalLoad> loads, Board board) {
        if (loads.isEmpty()) {
            boolean known = board.typicalA() != null || board.peakA() != null;
            return known ? List.of(onNoRail(board)) : loads;
        }
        ElectricalLoad first = loads.get(0);
        ElectricalLoad changed = new ElectricalLoad(
                first.rail(),
                first.draws(),
                board.typicalA(),
                board.peakA(),
                first.minV(),
                first.maxV(),
                first.dutyByPhase(),
                first.exclusiveGroup(),
                first.lead());
        return Stream.concat(Stream.of(changed), loads.stream().skip(1)).toList();
    }

    private static ElectricalLoad onNoRail(Board board) {
        return new ElectricalLoad(
                null,
                ElectricalLoad.Draws.CONSTANT_CURRENT,
                board.typicalA(),
                board.peakA(),
                null,
                null,
                Map.of(),
                null,
                null);
    }
}
