package dev.ledgerwing.web.parts;

import dev.ledgerwing.core.build.Assembly;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.web.support.Slug;
import java.util.Optional;

/** Finds the assembly of a name, or makes a new one with a code of its own. */
final class AssemblyNames {

    private AssemblyNames() {}

    static Assembly named(Build build, String name) {
        Optional<Assembly> there = build.assemblies().stream()
                .filter(assembly -> assembly.name().equalsIgnoreCase(name))
                .findFirst();
        return there.orElseGet(() -> new Assembly(freeCode(build, name), name, Assembly.MovesWith.FUSELAGE));
    }

    private static String freeCode(Build build, String name) {
        String made = Slug.of(name, 36);
        String stem = made.isEmpty() ? "assembly" : made;
        String code = stem;
        for (int i = 2; build.assembly(code).isPresent(); i++) {
            code = stem + "-" + i;
        }
        return code;
    }
}
