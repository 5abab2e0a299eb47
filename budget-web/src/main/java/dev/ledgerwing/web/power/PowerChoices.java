package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.FeedElement.SwitchedLoad;
import dev.ledgerwing.core.build.Pack.Chemistry;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.SolarArray.Connection;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.power.network.PowerWords;
import dev.ledgerwing.web.forms.Choices;
import java.util.LinkedHashMap;
import java.util.Map;

/** The lists to choose from in the forms of the supply, each from value to words in the order to be shown. */
final class PowerChoices {

    static final String PLEASE = "please choose";
    private static final int THICKEST = -3;
    private static final int THINNEST = 40;

    private PowerChoices() {}

    /** Sources, then rails: whatever a feed may come from. */
    static Map<String, String> ends(Build build) {
        Map<String, String> ends = Choices.names(build.power().sources());
        ends.putAll(Choices.names(build.power().rails()));
        return ends;
    }

    static Map<String, String> elements() {
        return Choices.of(FeedElement.Kind.values(), PowerWords::word);
    }

    static Map<String, String> sharings() {
        return Choices.optional("there is only one", Choices.of(Sharing.values(), each -> switch (each) {
            case JOINED -> "joined at both ends";
            case OWN_BRANCH -> "each in a branch of its own";
        }));
    }

    static Map<String, String> switchedLoads() {
        return Choices.optional("not said", Choices.of(SwitchedLoad.values(), each -> switch (each) {
            case RESISTIVE -> "heaters and the like";
            case LAMP -> "lamps";
            case INDUCTIVE -> "coils and relays";
            case MOTOR -> "motors";
        }));
    }

    static Map<String, String> regulators() {
        return Choices.of(
                new Regulator.Type[] {Regulator.Type.SWITCHING, Regulator.Type.LINEAR}, each -> switch (each) {
                    case LINEAR -> "linear";
                    case SWITCHING -> "switching";
                });
    }

    /** The bundle first: wires that nothing is said of yet get the lower rating. */
    static Map<String, String> routings() {
        return Choices.of(new Routing[] {Routing.BUNDLE, Routing.FREE_AIR}, each -> switch (each) {
            case FREE_AIR -> "in free air";
            case BUNDLE -> "in a bundle";
        });
    }

    /** American wire gauge, thick to thin: 4/0 is −3. */
    static Map<String, String> gauges() {
        Map<String, String> gauges = new LinkedHashMap<>();
        for (int awg = THICKEST; awg <= THINNEST; awg++) {
            gauges.put(Integer.toString(awg), awg > 0 ? Integer.toString(awg) : (1 - awg) + "/0");
        }
        return Choices.optional("not chosen", gauges);
    }

    static Map<String, String> chemistries() {
        return Choices.of(Chemistry.values(), each -> switch (each) {
            case LITHIUM_POLYMER -> "lithium polymer, 4.2 V full";
            case LITHIUM_POLYMER_HIGH_VOLTAGE -> "lithium polymer, 4.35 V full";
            case LITHIUM_ION -> "lithium ion";
            case LITHIUM_IRON_PHOSPHATE -> "lithium iron phosphate";
            case NICKEL_METAL_HYDRIDE -> "nickel metal hydride";
            case OTHER -> "others, by their voltages";
        });
    }

    static Map<String, String> connections() {
        return Choices.of(Connection.values(), each -> switch (each) {
            case DIRECT -> "straight to the pack";
            case TRACKER -> "through a tracker";
        });
    }

    static Map<String, String> draws() {
        return Choices.of(Draws.values(), each -> switch (each) {
            case CONSTANT_CURRENT -> "the same current";
            case CONSTANT_POWER -> "the same power";
        });
    }
}
