package dev.ledgerwing.core.build;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What builders take out of the supply, each as the record after it: mentions go with what is mentioned. */
public final class SupplyDeeds {

    private SupplyDeeds() {}

    /** Removes a source and the feeds that begin at it. */
    public static Build withoutSource(Build build, String code) {
        Build cut = build.withFeeds(build.power().feeds().stream()
                .filter(feed -> !feed.from().equals(code))
                .toList());
        return cut.withSources(cut.power().sources().stream()
                .filter(source -> !source.code().equals(code))
                .toList());
    }

    /** Removes phases, and the mention of them by other phases, by the duty of loads, by functions and by the day in the sun. */
    public static Build withoutPhases(Build build, Collection<String> codes) {
        Build cut = build.withLines(
                build.lines().stream().map(line -> withoutDuty(line, codes)).toList());
        SolarDay day = cut.power().day();
        if (day != null && mentions(codes, day.phase())) {
            cut = cut.withSolarDay(day.withPhase(null));
        }
        cut = RadioDeeds.withoutMentionOf(cut, codes);
        return cut.withPhases(cut.phases().stream()
                .filter(phase -> !codes.contains(phase.code()))
                .map(phase -> phase.withNext(without(phase.next(), codes)))
                .toList());
    }

    private static PartLine withoutDuty(PartLine line, Collection<String> phases) {
        return line.withElectrical(line.electrical().stream()
                .map(load -> withoutDuty(load, phases))
                .toList());
    }

    private static ElectricalLoad withoutDuty(ElectricalLoad load, Collection<String> phases) {
        Map<String, Double> left = new TreeMap<>(load.dutyByPhase());
        left.keySet().removeAll(phases);
        return load.withDutyByPhase(left);
    }

    /**
     * Removes functions, and the mention of them by parts that serve them, by solar cells that are stopped by them and by the
     * radio.
     */
    public static Build withoutFunctions(Build build, Collection<String> codes) {
        return RadioDeeds.withoutFunctionsOnChannels(build, codes)
                .withLines(build.lines().stream()
                        .map(line -> line.withServes(without(line.serves(), codes)))
                        .toList())
                .withSources(build.power().sources().stream()
                        .map(source -> withoutStop(source, codes))
                        .toList())
                .withFunctions(build.radio().functions().stream()
                        .filter(function -> !codes.contains(function.code()))
                        .toList());
    }

    private static PowerSource withoutStop(PowerSource source, Collection<String> functions) {
        SolarArray array = source.array();
        return array != null && mentions(functions, array.stopFunction())
                ? source.withArray(array.withStopFunction(null))
                : source;
    }

    private static boolean mentions(Collection<String> codes, @Nullable String code) {
        return code != null && codes.contains(code);
    }

    private static List<String> without(List<String> all, Collection<String> codes) {
        return all.stream().filter(each -> !codes.contains(each)).toList();
    }
}
