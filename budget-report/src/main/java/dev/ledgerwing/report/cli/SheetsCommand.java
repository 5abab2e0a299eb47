package dev.ledgerwing.report.cli;

import dev.ledgerwing.report.cli.BuildFiles.Read;
import dev.ledgerwing.report.sheet.SheetHead;
import dev.ledgerwing.report.site.SiteAirframe;
import dev.ledgerwing.report.site.SiteFile;
import dev.ledgerwing.report.site.SiteFolder;
import dev.ledgerwing.report.site.StaticSite;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the sheets of build files into a folder. */
@Command(
        name = "sheets",
        description =
                "Writes the sheets of some airframes (build, mass and balance, power, radio, wiring and outputs), and a page that leads to them, into a folder.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:the sheets were written", "2:a file or the folder cannot be used; nothing was written"})
@SuppressWarnings("NullAway.Init")
final class SheetsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "build files, or folders of build files")
    private List<Path> files;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "the folder to write into; files in it that are not of this program are left alone")
    private Path out;

    @Option(names = "--pdf", description = "each sheet as PDF too")
    private boolean pdf;

    @Option(names = "--date", paramLabel = "DATE", description = "the date to print on the sheets: 2026-11-24")
    private @Nullable LocalDate date;

    @Override
    public Integer call() throws Unusable, IOException {
        List<SiteAirframe> airframes = airframes(BuildFiles.readAll(files));
        List<SiteFile> site = new StaticSite().files(airframes, pdf);
        SiteFolder folder = SiteFolder.at(out);
        List<String> obstacles = folder.obstacles(site);
        if (!obstacles.isEmpty()) {
            throw new Unusable(
                    obstacles.stream().map(obstacle -> out + ": " + obstacle).toList());
        }
        folder.write(site);
        spec.commandLine().getOut().print(out.resolve("index.html") + "\n");
        return BudgetReport.DONE;
    }

    private List<SiteAirframe> airframes(List<Read> read) throws Unusable {
        Map<String, Path> byCode = new HashMap<>();
        List<String> problems = new ArrayList<>();
        List<SiteAirframe> airframes = new ArrayList<>();
        for (Read file : read) {
            String code = file.build().airframe().code();
            Path other = byCode.putIfAbsent(code, file.path());
            if (other != null) {
                problems.add(
                        file.path() + ": is about the airframe “" + code + "”, as " + other + " is: name one of them");
            }
            airframes.add(new SiteAirframe(
                    file.review(), SheetHead.draft(file.fingerprint()).withDate(date)));
        }
        if (!problems.isEmpty()) {
            throw new Unusable(problems);
        }
        return airframes;
    }
}
