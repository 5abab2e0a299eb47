package dev.ledgerwing.report.cli;

import dev.ledgerwing.core.build.Airframe;
import dev.ledgerwing.core.build.Build;
import dev.ledgerwing.core.build.MassBudget;
import dev.ledgerwing.core.build.Stage;
import dev.ledgerwing.core.file.BuildFile;
import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.core.file.table.PartsTable;
import dev.ledgerwing.core.file.table.TableImport;
import dev.ledgerwing.core.file.table.TableReading;
import dev.ledgerwing.report.table.TableJson;
import dev.ledgerwing.report.table.TableText;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a parts table, says how, and makes a build file of it. */
@Command(
        name = "table",
        description = "Reads a parts table, says how it understood every column, and makes a build file of it.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:the table can be used", "2:a problem stands in the way; nothing was written"})
@SuppressWarnings("NullAway.Init")
final class TableCommand implements Callable<Integer> {

    private static final MassBudget NO_LIMITS = new MassBudget(null, null, null, null);
    private static final int LONGEST_CODE = 40;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "a parts table: CSV with commas, semicolons or tabs")
    private Path file;

    @Option(names = "--json", description = "for other programs: how the table was understood as JSON")
    private boolean json;

    @Option(
            names = "--column",
            paramLabel = "N=MEANING[:UNIT]",
            converter = ColumnOption.class,
            description = "what column N, counted from 1, holds and what its numbers count in: 3=unit-mass:oz")
    private List<ColumnMeaning> columns = List.of();

    @Option(names = "--out", paramLabel = "BUILD.json", description = "the build file to make; must not be there yet")
    private @Nullable Path out;

    @Option(names = "--code", paramLabel = "CODE", description = "code of the airframe (default: from the file's name)")
    private @Nullable String code;

    @Option(names = "--name", paramLabel = "NAME", description = "name of the airframe (default: the file's name)")
    private @Nullable String name;

    @Override
    public Integer call() throws Unusable, IOException {
        TableReading reading = PartsTable.read(BuildFiles.bytes(file, PartsTable.MOST_BYTES), columns);
        if (json) {
            spec.commandLine().getOut().print(TableJson.of(reading));
        } else if (reading.trouble() == null) {
            spec.commandLine().getOut().print(TableText.of(reading));
        }
        List<String> problems = problems(reading);
        if (!problems.isEmpty()) {
            throw new Unusable(
                    problems.stream().map(problem -> file + ": " + problem).toList());
        }
        if (out != null) {
            write(TableImport.APPEND.into(Build.blank(airframe(), NO_LIMITS), reading, ids()), out);
        }
        return BudgetReport.DONE;
    }

    private static List<String> problems(TableReading reading) {
        if (reading.isUsable()) {
            return List.of();
        }
        Stream<String> problems = Stream.concat(
                reading.refusal().stream(), reading.problems().stream().map(TableText::problem));
        List<String> found = problems.toList();
        return found.isEmpty() ? List.of("there is no part in the table") : found;
    }

    private Airframe airframe() throws Unusable {
        String base = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        try {
            return new Airframe(
                    code == null ? slug(base) : code, name == null ? base : name, null, Stage.CONCEPT, "not said");
        } catch (IllegalArgumentException refused) {
            throw new Unusable("--code or --name: " + refused.getMessage());
        }
    }

    private static String slug(String text) {
        String slug =
                text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+", "");
        return slug.isEmpty() ? "airframe" : slug.substring(0, Math.min(slug.length(), LONGEST_CODE));
    }

    private static Supplier<String> ids() {
        var numbers = IntStream.rangeClosed(1, PartsTable.MOST_ROWS).iterator();
        return () -> String.format(Locale.ROOT, "L%03d", numbers.nextInt());
    }

    private static void write(Build build, Path path) throws Unusable, IOException {
        try {
            Files.write(path, BuildFile.write(build), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException there) {
            throw new Unusable(path + ": is there already, name another file");
        }
    }
}
