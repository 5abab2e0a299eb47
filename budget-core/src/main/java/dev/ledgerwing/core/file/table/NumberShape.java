package dev.ledgerwing.core.file.table;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** In how many ways the digits of a number can be read: with the point or with the comma as decimal mark. */
enum NumberShape {
    /** The same in both ways. */
    SAME,
    ONLY_POINT,
    ONLY_COMMA,
    /** In both ways, with different results: {@code 1,234}. */
    EITHER,
    /** In neither. */
    NONE;

    /** Digits in groups of three, each group parted by the same character, then the decimals. */
    private static final String GROUPED = "(?:[1-9]\\d{0,2}([%s'’\\s\\u00a0\\u2009\\u202f])\\d{3}(?:\\1\\d{3})*|\\d+)";

    private static final Pattern WITH_POINT = Pattern.compile(GROUPED.replace("%s", ",") + "(?:\\.\\d*)?|\\.\\d+");
    private static final Pattern WITH_COMMA = Pattern.compile(GROUPED.replace("%s", ".") + "(?:,\\d*)?|,\\d+");
    private static final Pattern BETWEEN_GROUPS = Pattern.compile("['’\\s\\u00a0\\u2009\\u202f]");

    static NumberShape of(String digits) {
        boolean point = WITH_POINT.matcher(digits).matches();
        boolean comma = WITH_COMMA.matcher(digits).matches();
        if (point && comma) {
            return digits.indexOf('.') < 0 && digits.indexOf(',') < 0 ? SAME : EITHER;
        }
        if (point) {
            return ONLY_POINT;
        }
        return comma ? ONLY_COMMA : NONE;
    }

    static boolean isAmbiguousPoint(String digits) {
        return digits.indexOf('.') >= 0 && of(digits) == EITHER;
    }

    /** The number with {@code mark} as its decimal mark; nothing where it cannot be read so. */
    static Optional<BigDecimal> value(String digits, char mark) {
        Pattern pattern = mark == '.' ? WITH_POINT : WITH_COMMA;
        if (!pattern.matcher(digits).matches()) {
            return Optional.empty();
        }
        String joined = BETWEEN_GROUPS.matcher(digits).replaceAll("").replace(mark == '.' ? "," : ".", "");
        String plain = joined.replace(mark, '.');
        return Optional.of(new BigDecimal(plain.endsWith(".") ? plain + "0" : plain));
    }
}
