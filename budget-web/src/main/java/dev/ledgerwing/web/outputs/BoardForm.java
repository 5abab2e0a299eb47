package dev.ledgerwing.web.outputs;

import dev.ledgerwing.core.build.Board;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.OutputBank;
import dev.ledgerwing.core.build.RadioDeeds;
import dev.ledgerwing.core.quantity.Mass;
import dev.ledgerwing.web.desk.Deed;
import dev.ledgerwing.web.forms.Elements;
import dev.ledgerwing.web.forms.Entries;
import dev.ledgerwing.web.forms.Shown;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A flight controller that is fitted or might be.
 *
 * @param code of the board; null = a new one
 */
record BoardForm(@Nullable String code) implements OutputsForm {

    @Override
    public String view() {
        return "outputs/board";
    }

    @Override
    public void show(Build build, Shown fields) {
        Board board = Elements.find(build.outputs().boards(), code);
        if (board == null) {
            fields.text(BankFields.LIST + ".0.name", "");
            return;
        }
        fields.text("name", board.name())
                .text("serial", count(board.serialPorts()))
                .text("i2c", count(board.i2cBuses()))
                .text("can", count(board.canBuses()))
                .text("analog", count(board.analogInputs()))
                .mass("mass", board.unitMass())
                .amount("typical", board.typicalA())
                .amount("peak", board.peakA())
                .amount("plugs", board.outputA());
        BankFields.show(board.banks(), fields);
    }

    private static String count(@Nullable Integer ports) {
        return ports == null ? "" : ports.toString();
    }

    @Override
    public boolean isShownBy(Build build) {
        return code == null || Elements.find(build.outputs().boards(), code) != null;
    }

    @Override
    public Map<String, Object> surroundings(Build build, Entries entries) {
        Board board = Elements.find(build.outputs().boards(), code);
        Map<String, Object> around = new LinkedHashMap<>();
        around.put("isNew", board == null);
        around.put("heading", board == null ? "New flight controller" : board.name());
        around.put("pulses", OutputChoices.pulses());
        around.put(
                "isFitted",
                board != null && board.code().equals(build.outputs().fitted().board()));
        return around;
    }

    @Override
    public Optional<Deed> deed(Entries entries, Build seen) {
        Optional<Board> read = board(entries, seen);
        return read.map(wanted -> {
            boolean isThere = Elements.find(seen.outputs().boards(), wanted.code()) != null;
            return Deed.fitting(
                    "Flight controller " + wanted.name() + (isThere ? " edited" : " added"),
                    build -> build.withBoards(Elements.with(build.outputs().boards(), wanted)));
        });
    }

    private Optional<Board> board(Entries entries, Build seen) {
        String name = entries.name("name", "Please name the flight controller.");
        List<OutputBank> banks = BankFields.banks(entries);
        Integer serial = ports("serial", entries);
        Integer i2c = ports("i2c", entries);
        Integer can = ports("can", entries);
        Integer analog = ports("analog", entries);
        Mass mass = entries.mass("mass");
        Double typicalA = entries.amount("typical", OutputBounds.TYPICAL);
        Double peakA = entries.amount("peak", OutputBounds.PEAK);
        if (typicalA != null && peakA != null && typicalA > peakA) {
            entries.trouble("peak", "The peak is at least the typical current.");
        }
        Double outputA = entries.amount("plugs", OutputBounds.PLUGS);
        if (!entries.areFine()) {
            return Optional.empty();
        }
        String id = code == null
                ? Elements.freshAddress(name, "board", seen.outputs().boards())
                : code;
        return Optional.of(new Board(id, name, banks, serial, i2c, can, analog, mass, typicalA, peakA, outputA));
    }

    private static @Nullable Integer ports(String field, Entries entries) {
        return entries.whole(field, 0, OutputBounds.MOST_PORTS);
    }

    /** Takes the board out of the record; where it was the one aboard, none is chosen. */
    static Deed removal(Board removed) {
        return Deed.fitting(
                "Flight controller " + removed.name() + " removed from the candidates",
                build -> RadioDeeds.withoutBoard(build, removed.code()));
    }
}
