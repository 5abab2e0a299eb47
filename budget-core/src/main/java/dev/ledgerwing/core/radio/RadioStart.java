package dev.ledgerwing.core.radio;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.Control;
import dev.ledgerwing.core.build.Control.Kind;
import dev.ledgerwing.core.build.Radio;
import dev.ledgerwing.core.build.RadioLink;
import java.util.ArrayList;
import java.util.List;

/**
 * Common sets of link and controls to begin with. Only what can be counted on the transmitter is put in; what the receiver does
 * when the signal is lost stays not known, so that nothing is called fine before it is entered.
 */
public enum RadioStart {
    SIX_CHANNELS(
            "six-channels",
            "Six channels, two sticks, two switches of three positions",
            6,
            List.of(
                    Control.ofSwitch("left-switch", "Left switch", 3),
                    Control.ofSwitch("right-switch", "Right switch", 3))),
    EIGHT_CHANNELS(
            "eight-channels",
            "Eight channels, two sticks, a slider, four switches",
            8,
            List.of(
                    Control.of("slider", "Slider", Kind.SLIDER),
                    Control.ofSwitch("left-front-switch", "Left front switch", 3),
                    Control.ofSwitch("right-front-switch", "Right front switch", 3),
                    Control.ofSwitch("left-back-switch", "Left back switch", 2),
                    Control.ofSwitch("right-back-switch", "Right back switch", 2)));

    private static final List<Control> STICKS = List.of(
            Control.of("right-stick-sideways", "Right stick, sideways", Kind.STICK),
            Control.of("right-stick-up-down", "Right stick, up and down", Kind.STICK),
            Control.of("left-stick-sideways", "Left stick, sideways", Kind.STICK),
            Control.of("left-stick-up-down", "Left stick, up and down", Kind.STICK));

    private final String code;
    private final String title;
    private final int channels;
    private final List<Control> others;

    RadioStart(String code, String title, int channels, List<Control> others) {
        this.code = code;
        this.title = title;
        this.channels = channels;
        this.others = others;
    }

    /** As it stands in addresses. */
    public String code() {
        return code;
    }

    public String title() {
        return title;
    }

    /** Whether nothing that it could spoil is there: no link and no control. */
    public static boolean isOffered(Build build) {
        Radio radio = build.radio();
        return radio.link() == null && radio.controls().isEmpty();
    }

    /**
     * The build with this link and these controls in it; each stick gives two controls, one for each way it moves.
     *
     * @throws IllegalArgumentException where it is not offered
     */
    public Build on(Build build) {
        if (!isOffered(build)) {
            throw new IllegalArgumentException(
                    "a link or a control is there already, so a ready-made start would be put on top of it");
        }
        List<Control> controls = new ArrayList<>(STICKS);
        controls.addAll(others);
        return build.withRadioLink(RadioLink.of(channels)).withControls(controls);
    }
}
