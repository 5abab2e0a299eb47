package dev.ledgerwing.web.tables;

import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.LoadCase;
import dev.ledgerwing.core.build.PartLine;
import dev.ledgerwing.core.file.table.TableImport;
import dev.ledgerwing.core.file.table.TableReading;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * What importing a table makes of a record.
 *
 * @param reading a usable one
 * @param looseAssembly name of the assembly for parts that give none
 */
record TableDeed(TableReading reading, Placing placing, String looseAssembly) {

    private static final int MOST_NAMED = 3;

    /**
     * The record with the table in it.
     *
     * @throws IllegalArgumentException with {@link #obstacle} where there is one
     */
    Build into(Build base, Supplier<String> newIds) {
        obstacle(base).ifPresent(sentence -> {
            throw new IllegalArgumentException(sentence);
        });
        TableImport kind = placing == Placing.REPLACE ? TableImport.REPLACE : TableImport.APPEND;
        return kind.withLooseAssembly(looseAssembly).into(base, reading, newIds);
    }

    /** Why the parts cannot be replaced: a load case would speak of parts that are gone. */
    Optional<String> obstacle(Build base) {
        return placing == Placing.APPEND
                ? Optional.empty()
                : base.loadCases().stream()
                        .filter(loadCase -> !named(loadCase).isEmpty())
                        .map(loadCase -> "The parts cannot be replaced: the load case “" + loadCase.name()
                                + "” speaks of " + names(base, named(loadCase)) + ", which would be gone.")
                        .findFirst();
    }

    private static Set<String> named(LoadCase loadCase) {
        Set<String> ids = new LinkedHashSet<>(loadCase.absent());
        ids.addAll(loadCase.moved().keySet());
        ids.addAll(loadCase.stowed());
        return ids;
    }

    private static String names(Build base, Set<String> ids) {
        List<String> names = ids.stream()
                .flatMap(id -> base.line(id).stream())
                .map(PartLine::name)
                .toList();
        String first = names.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        return names.size() <= MOST_NAMED ? first : first + " and " + (names.size() - MOST_NAMED) + " more parts";
    }

    /** What is done, in one line for the history. */
    String title(String table) {
        int count = reading.parts().size();
        String parts = count == 1 ? "1 part" : count + " parts";
        return placing == Placing.REPLACE
                ? "All parts replaced by " + parts + " from " + table
                : parts + " imported from " + table;
    }
}
