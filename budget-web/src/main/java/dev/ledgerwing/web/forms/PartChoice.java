package dev.ledgerwing.web.forms;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.PartLine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The parts of a record to choose from. */
public final class PartChoice {

    private PartChoice() {}

    /** An assembly with its parts. */
    public record Group(String assembly, List<Choice> parts) {}

    public record Choice(String id, String name) {}

    /** Assembly by assembly, without those that have no such part. */
    public static List<Group> groups(Build build, Predicate<PartLine> wanted) {
        return build.assemblies().stream()
                .map(assembly -> new Group(
                        assembly.name(),
                        build.lines().stream()
                                .filter(line -> line.assembly().equals(assembly.code()) && wanted.test(line))
                                .map(line -> new Choice(line.id(), line.name()))
                                .toList()))
                .filter(group -> !group.parts().isEmpty())
                .toList();
    }

    /** From id to name, an empty choice first. */
    public static Map<String, String> list(Build build) {
        Map<String, String> list = new LinkedHashMap<>();
        list.put("", "please choose");
        build.lines().forEach(line -> list.put(line.id(), line.name()));
        return list;
    }

    public static String name(Build build, String id) {
        return build.line(id).map(PartLine::name).orElse(id);
    }
}
