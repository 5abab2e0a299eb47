package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Radio;
import java.util.List;
import java.util.Objects;

/**
 * A switch with more positions in place of one; what mixes it has more of them then, too.
 *
 * @param positions how many it has to have
 */
public record MorePositions(Control control, int positions) implements Relaxation {

    @Override
    public Kind kind() {
        return Kind.MORE_POSITIONS;
    }

    @Override
    public String key() {
        return "more-positions:" + control.code() + "=" + positions;
    }

    @Override
    public String what() {
        return "Fit a switch with " + positions + " positions as " + control.name() + ".";
    }

    @Override
    public String loses() {
        return "Nothing in flight; " + control.name() + " has " + has() + " positions now, so the switch is replaced.";
    }

    private int has() {
        return Objects.requireNonNull(control.positions(), "a switch has positions");
    }

    @Override
    public Loss loss() {
        return new Loss(0, 0, positions - has());
    }

    @Override
    public Radio in(Radio radio, String by, String why) {
        List<Control> controls = radio.controls().stream().map(this::changed).toList();
        return new Radio(radio.link(), controls, radio.functions(), radio.channels(), radio.notNeeded());
    }

    private Control changed(Control each) {
        if (each.code().equals(control.code())) {
            return each.withPositions(positions);
        }
        Integer product = each.positions();
        return product != null && each.mixes().contains(control.code())
                ? each.withPositions(product / has() * positions)
                : each;
    }

    /** Whether no mixed control would get more positions than one can have. */
    boolean isPossibleIn(Radio radio) {
        return radio.controls().stream()
                .filter(each -> each.mixes().contains(control.code()))
                .map(Control::positions)
                .filter(Objects::nonNull)
                .allMatch(product -> product / has() * positions <= Control.MOST_POSITIONS);
    }
}
