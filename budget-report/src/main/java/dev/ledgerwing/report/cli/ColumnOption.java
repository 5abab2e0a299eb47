package dev.ledgerwing.report.cli;

import dev.ledgerwing.core.file.table.ColumnMeaning;
import dev.ledgerwing.core.file.table.Meaning;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what a person says of a column: {@code 3=unit-mass} or, with the unit of its numbers, {@code 3=unit-mass:oz}. */
final class ColumnOption implements ITypeConverter<ColumnMeaning> {

    private static final Pattern SHAPE = Pattern.compile("(\\d{1,4})=([A-Za-z_-]+)(?::(.+))?");

    @Override
    public ColumnMeaning convert(String text) {
        Matcher matcher = SHAPE.matcher(text);
        if (!matcher.matches()) {
            throw new TypeConversionException(
                    "expected COLUMN=MEANING or COLUMN=MEANING:UNIT, such as 3=unit-mass:oz, was “" + text + "”");
        }
        try {
            return new ColumnMeaning(Integer.parseInt(matcher.group(1)), meaning(matcher.group(2)), matcher.group(3));
        } catch (IllegalArgumentException outOfRange) {
            throw new TypeConversionException(String.valueOf(outOfRange.getMessage()));
        }
    }

    private static Meaning meaning(String word) {
        return Arrays.stream(Meaning.values())
                .filter(meaning ->
                        word(meaning).equals(word.toLowerCase(Locale.ROOT).replace('_', '-')))
                .findFirst()
                .orElseThrow(() ->
                        new TypeConversionException("“" + word + "” is no meaning of a column; there are " + words()));
    }

    private static String words() {
        return Arrays.stream(Meaning.values()).map(ColumnOption::word).collect(Collectors.joining(", "));
    }

    private static String word(Meaning meaning) {
        return meaning.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
