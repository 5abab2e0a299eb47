package dev.ledgerwing.core.file.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The text of a file. A byte-order mark decides; without one it is UTF-8 where it can be, otherwise Windows-1252 (what
 * spreadsheets of western Europe write).
 */
record TableText(String text, String encoding) {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final char BYTE_ORDER_MARK = '\ufeff';

    static TableText decode(byte[] bytes) throws TableRefused {
        if (bytes.length == 0) {
            throw new TableRefused("The file is empty.");
        }
        if (bytes.length > PartsTable.MOST_BYTES) {
            throw new TableRefused("The file is larger than 8 MB, the most that is read as a parts table.");
        }
        TableText decoded = firstThatFits(bytes, charsets(bytes));
        String text = decoded.text;
        if (text.indexOf('\0') >= 0) {
            throw new TableRefused("The file holds a NUL byte, so it is not a text table."
                    + " Export it as CSV in UTF-8 and try again.");
        }
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return marked ? new TableText(text.substring(1), decoded.encoding) : decoded;
    }

    private static List<Charset> charsets(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return List.of(StandardCharsets.UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return List.of(StandardCharsets.UTF_16BE);
        }
        return List.of(StandardCharsets.UTF_8, WINDOWS_1252);
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static TableText firstThatFits(byte[] bytes, List<Charset> charsets) throws TableRefused {
        for (Charset charset : charsets) {
            Optional<String> text = decoded(bytes, charset);
            if (text.isPresent()) {
                return new TableText(text.get(), charset.name());
            }
        }
        throw new TableRefused(
                "The file is not text in UTF-8, UTF-16 or Windows-1252. Export it as CSV in UTF-8 and try again.");
    }

    /** Nothing where the bytes do not fit; a plain String would replace them in silence. */
    private static Optional<String> decoded(byte[] bytes, Charset charset) {
        try {
            return Optional.of(
                    charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException doesNotFit) {
            return Optional.empty();
        }
    }
}
