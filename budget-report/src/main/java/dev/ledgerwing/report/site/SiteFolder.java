package dev.ledgerwing.report.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * The folder a site is written into. Writes nothing outside it, follows no link out of it, and replaces no file that it did not write
 * itself: a list in the folder says which those are.
 */
public final class SiteFolder {

    static final String LIST = "budget-report-files.txt";

    private static final String LIST_HEADER = "Written by budget-report, which replaces these files and no others:";

    private final Path folder;

    private SiteFolder(Path folder) {
        this.folder = folder;
    }

    /** The folder, made if it is not there. */
    public static SiteFolder at(Path folder) throws IOException {
        Files.createDirectories(folder);
        return new SiteFolder(folder.toRealPath());
    }

    /** What keeps these files from being written, one sentence each; empty = nothing. */
    public List<String> obstacles(List<SiteFile> files) throws IOException {
        if (isThere(folder.resolve(LIST)) && !isOurList()) {
            return List.of(LIST + " is there already and was not written by budget-report: choose another folder");
        }
        Set<String> own = own();
        return files.stream()
                .map(SiteFile::path)
                .filter(path -> isThroughALink(path) || (!own.contains(path) && isThere(folder.resolve(path))))
                .map(path -> path + " is there already and was not written by budget-report: choose another folder")
                .toList();
    }

    /** Writes the files, each of them whole or not at all. */
    public void write(List<SiteFile> files) throws IOException {
        Set<String> own = new TreeSet<>(own());
        files.forEach(file -> own.add(file.path()));
        replace(folder.resolve(LIST), list(own));
        for (SiteFile file : files) {
            Path path = folder.resolve(file.path());
            Files.createDirectories(path.getParent());
            replace(path, file.bytes());
        }
    }

    /** A link in the place of the file is replaced, not followed. */
    private static void replace(Path path, byte[] bytes) throws IOException {
        Path draft = path.resolveSibling("budget-report-" + UUID.randomUUID() + ".part");
        try {
            Files.write(draft, bytes, StandardOpenOption.CREATE_NEW);
            Files.move(draft, path, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    /** Whether a folder on the way to the file is a link or no folder, or the file itself is a folder. */
    private boolean isThroughALink(String path) {
        Path below = Path.of(path);
        for (int names = 1; names < below.getNameCount(); names++) {
            Path parent = folder.resolve(below.subpath(0, names));
            if (isThere(parent) && !Files.isDirectory(parent, LinkOption.NOFOLLOW_LINKS)) {
                return true;
            }
        }
        return Files.isDirectory(folder.resolve(below), LinkOption.NOFOLLOW_LINKS);
    }

    private static boolean isThere(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    private boolean isOurList() throws IOException {
        return Files.isRegularFile(folder.resolve(LIST), LinkOption.NOFOLLOW_LINKS)
                && Files.readString(folder.resolve(LIST), StandardCharsets.ISO_8859_1)
                        .startsWith(LIST_HEADER);
    }

    private Set<String> own() throws IOException {
        if (!isThere(folder.resolve(LIST))) {
            return Set.of();
        }
        return Files.readAllLines(folder.resolve(LIST), StandardCharsets.ISO_8859_1).stream()
                .skip(1)
                .collect(Collectors.toSet());
    }

    private static byte[] list(Set<String> paths) {
        return (LIST_HEADER + "\n" + String.join("\n", paths) + "\n").getBytes(StandardCharsets.ISO_8859_1);
    }
}
