package dev.ledgerwing.core.file.table;

/** Why a file cannot be read at all, as a sentence; never leaves the package. */
final class TableRefused extends Exception {

    private static final long serialVersionUID = 1;

    private final String sentence;

    TableRefused(String sentence) {
        super(sentence);
        this.sentence = sentence;
    }

    String sentence() {
        return sentence;
    }
}
