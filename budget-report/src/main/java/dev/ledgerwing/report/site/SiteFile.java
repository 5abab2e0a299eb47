package dev.ledgerwing.report.site;

import java.util.regex.Pattern;

/** One file of the site: where it goes, and what is in it. */
public final class SiteFile {

    private static final Pattern HARMLESS = Pattern.compile("([a-z0-9][a-z0-9-]*/)*[A-Za-z0-9][A-Za-z0-9-]*\\.[a-z]+");

    private final String path;
    private final byte[] bytes;

    /**
     * A file for the site.
     *
     * @param path inside the site's folder, folders parted by slashes; only names that are harmless on every system
     */
    public SiteFile(String path, byte[] bytes) {
        if (!HARMLESS.matcher(path).matches()) {
            throw new IllegalArgumentException("path must be plain names parted by slashes, was “" + path + "”");
        }
        this.path = path;
        this.bytes = bytes.clone();
    }

    public String path() {
        return path;
    }

    public byte[] bytes() {
        return bytes.clone();
    }
}
