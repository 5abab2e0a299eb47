package dev.ledgerwing.core.file.table;

import java.util.List;

/**
 * Which of point and comma is the decimal mark of a table. Numbers such as {@code 12,5} or {@code 1.234,5} can be read in one
 * way only and settle it; {@code 1,234} alone settles nothing.
 *
 * @param mark point or comma
 * @param settled whether numbers of the table show it, and none shows the other
 * @param commaParted whether commas part the cells: a program that writes so has the point as decimal mark
 */
record DecimalMark(char mark, boolean settled, boolean commaParted) {

    static DecimalMark of(List<String> numbers, char delimiter) {
        long point = count(numbers, NumberShape.ONLY_POINT);
        long comma = count(numbers, NumberShape.ONLY_COMMA);
        boolean settled = (point > 0) != (comma > 0);
        if (point != comma) {
            return new DecimalMark(point > comma ? '.' : ',', settled, delimiter == ',');
        }
        if (delimiter == ',') {
            return new DecimalMark('.', false, true);
        }
        long maybePoint = numbers.stream().filter(NumberShape::isAmbiguousPoint).count();
        long maybeComma = count(numbers, NumberShape.EITHER) - maybePoint;
        return new DecimalMark(maybeComma > maybePoint ? ',' : '.', false, false);
    }

    /** Whether a number that could be read in two ways needs to be pointed out. */
    boolean leavesOpen(String number) {
        boolean pointAsExpected = commaParted && mark == '.' && number.indexOf('.') >= 0;
        return !settled && !pointAsExpected && NumberShape.of(number) == NumberShape.EITHER;
    }

    String word() {
        return mark == '.' ? "point" : "comma";
    }

    private static long count(List<String> numbers, NumberShape shape) {
        return numbers.stream()
                .filter(number -> NumberShape.of(number) == shape)
                .count();
    }
}
