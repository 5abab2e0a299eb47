package dev.ledgerwing.report.cli;

import dev.ledgerwing.core.file.BuildFile;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** Which version of the program this is, and which files it reads. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {
            "budget-report " + Objects.requireNonNullElse(version, "(not packaged)"), "reads " + BuildFile.FORMAT
        };
    }
}
