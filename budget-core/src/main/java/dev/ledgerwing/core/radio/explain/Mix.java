package dev.ledgerwing.core.radio.explain;

import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Radio;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Two switches mixed onto one channel.
 *
 * @param coarse moves in coarse steps along the pulse, {@code fine} between them
 */
public record Mix(Control coarse, Control fine) implements Relaxation {

    private static final int LONGEST_CODE = 40;
    private static final int LONGEST_NAME = 200;

    @Override
    public Kind kind() {
        return Kind.MIX;
    }

    @Override
    public String key() {
        return "mix:" + coarse.code() + "+" + fine.code();
    }

    @Override
    public String what() {
        return "Mix " + both() + " onto one channel with " + product() + " levels.";
    }

    @Override
    public String loses() {
        return "Neither " + coarse.name() + " nor " + fine.name()
                + " can drive a channel by itself any more, and a function hangs on both of them.";
    }

    private String both() {
        return coarse.name() + " and " + fine.name();
    }

    int product() {
        return positions(coarse) * positions(fine);
    }

    static int positions(Control control) {
        return Objects.requireNonNull(control.positions(), "a switch has positions");
    }

    @Override
    public Loss loss() {
        return new Loss(0, 3, product());
    }

    @Override
    public Radio in(Radio radio, String by, String why) {
        List<Control> controls = new ArrayList<>(radio.controls());
        String code = freeCode(controls);
        controls.add(new Control(
                code,
                both().length() <= LONGEST_NAME ? both() : code,
                Control.Kind.MIXED,
                product(),
                List.of(coarse.code(), fine.code())));
        return new Radio(radio.link(), controls, radio.functions(), radio.channels(), radio.notNeeded());
    }

    private String freeCode(List<Control> controls) {
        Set<String> taken = controls.stream().map(Control::code).collect(Collectors.toSet());
        String wanted = coarse.code() + "-" + fine.code();
        String base = wanted.length() <= LONGEST_CODE ? wanted : "mix";
        String code = base;
        for (int number = 2; taken.contains(code); number++) {
            String end = "-" + number;
            code = base.substring(0, Math.min(base.length(), LONGEST_CODE - end.length())) + end;
        }
        return code;
    }
}
