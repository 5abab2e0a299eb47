package dev.ledgerwing.web.power;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.ElectricalLoad.Draws;
import dev.ledgerwing.core.build.Element;
import dev.ledgerwing.core.build.FeedElement;
import dev.ledgerwing.core.build.FeedElement.Sharing;
import dev.ledgerwing.core.build.FeedElement.SwitchedLoad;
import dev.ledgerwing.core.build.Pack.Chemistry;
import dev.ledgerwing.core.build.RadioFunction;
import dev.ledgerwing.core.build.Regulator;
import dev.ledgerwing.core.build.SolarArray.Connection;
import dev.ledgerwing.core.build.WireRun.Routing;
import dev.ledgerwing.core.power.network.PowerWords;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The lists to choose from in the forms of the supply, each from value to words in the order to be shown. */
final class PowerChoices {

    static final String PLEASE = "please choose";
    private static final int THICKEST = -3;
    private static final int THINNEST = 40;

    private PowerChoices() {}

    /** An empty choice first. */
    static Map<String, String> optional(String empty, Map<String, String> others) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", empty);
        all.putAll(others);
        return all;
    }

    static Map<String, String> names(List<? extends Element> elements) {
        Map<String, String> names = new LinkedHashMap<>();
        elements.forEach(element -> names.put(element.id(), element.name()));
        return names;
    }

    /** Sources, then rails: whatever a feed may come from. */
    static Map<String, String> ends(Build build) {
        Map<String, String> ends = names(build.power().sources());
        ends.putAll(names(build.power().rails()));
        return ends;
    }

    private static <E extends Enum<E>> Map<String, String> of(E[] values, Function<E, String> words) {
        Map<String, String> choices = new LinkedHashMap<>();
        Arrays.stream(values).forEach(each -> choices.put(each.name(), words.apply(each)));
        return choices;
    }

    static Map<String, String> elements() {
        return of(FeedElement.Kind.values(), PowerWords::word);
    }

    static Map<String, String> sharings() {
        return optional("there is only one", of(Sharing.values(), each -> switch (each) {
            case JOINED -> "joined at both ends";
            case OWN_BRANCH -> "each in a branch of its own";
        }));
    }

    static Map<String, String> switchedLoads() {
        return optional("not said", of(SwitchedLoad.values(), each -> switch (each) {
            case RESISTIVE -> "heaters and the like";
            case LAMP -> "lamps";
            case INDUCTIVE -> "coils and relays";
            case MOTOR -> "motors";
        }));
    }

    static Map<String, String> regulators() {
        return of(new Regulator.Type[] {Regulator.Type.SWITCHING, Regulator.Type.LINEAR}, each -> switch (each) {
            case LINEAR -> "linear";
            case SWITCHING -> "switching";
        });
    }

    /** The bundle first: wires that nothing is said of yet get the lower rating. */
    static Map<String, String> routings() {
        return of(new Routing[] {Routing.BUNDLE, Routing.FREE_AIR}, each -> switch (each) {
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
        return optional("not chosen", gauges);
    }

    static Map<String, String> chemistries() {
        return of(Chemistry.values(), each -> switch (each) {
            case LITHIUM_POLYMER -> "lithium polymer, 4.2 V full";
            case LITHIUM_POLYMER_HIGH_VOLTAGE -> "lithium polymer, 4.35 V full";
            case LITHIUM_ION -> "lithium ion";
            case LITHIUM_IRON_PHOSPHATE -> "lithium iron phosphate";
            case NICKEL_METAL_HYDRIDE -> "nickel metal hydride";
            case OTHER -> "others, by their voltages";
        });
    }

    static Map<String, String> connections() {
        return of(Connection.values(), each -> switch (each) {
            case DIRECT -> "straight to the pack";
            case TRACKER -> "through a tracker";
        });
    }

    static Map<String, String> draws() {
        return of(Draws.values(), each -> switch (each) {
            case CONSTANT_CURRENT -> "the same current";
            case CONSTANT_POWER -> "the same power";
        });
    }

    static Map<String, String> functionKinds() {
        return of(RadioFunction.Kind.values(), each -> switch (each) {
            case PROPORTIONAL -> "proportional";
            case SWITCHED -> "switched";
        });
    }

    static Map<String, String> criticalities() {
        return of(RadioFunction.Criticality.values(), each -> switch (each) {
            case FLIGHT -> "the flight itself";
            case MISSION -> "the errand";
            case CONVENIENCE -> "comfort";
        });
    }
}
