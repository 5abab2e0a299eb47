package dev.ledgerwing.core.file.table;

import dev.ledgerwing.core.file.table.UnitNumbers.Measured;
import dev.ledgerwing.core.quantity.Length;
import dev.ledgerwing.core.quantity.Reading;
import org.jspecify.annotations.Nullable;

/** Reads where a part sits. */
final class StationCells {

    private final Sheet sheet;
    private final UnitNumbers numbers;

    StationCells(Sheet sheet, UnitNumbers numbers) {
        this.sheet = sheet;
        this.numbers = numbers;
    }

    TableStation read(TableRow row) {
        return new TableStation(
                coordinate(sheet.cell(row, Meaning.STATION_X)),
                coordinate(sheet.cell(row, Meaning.STATION_Y)),
                coordinate(sheet.cell(row, Meaning.STATION_Z)));
    }

    private @Nullable Length coordinate(Cell cell) {
        Reading<Measured> reading = numbers.read(cell);
        Measured measured = reading.found();
        if (measured == null) {
            reading.problem().ifPresent(trouble -> refuse(cell, trouble));
            if (cell.isFilled() && NotKnown.says(cell.text())) {
                sheet.notes().notice(cell, cell.quoted() + ": the station is taken as not known.");
            }
            return null;
        }
        if (measured.value().abs().compareTo(Limits.LARGEST_STATION_MM) > 0) {
            refuse(cell, "is farther than 100 000 mm from the datum");
            return null;
        }
        return Length.ofMm(measured.value().doubleValue());
    }

    private void refuse(Cell cell, String trouble) {
        sheet.notes()
                .problem(
                        cell,
                        cell.quoted() + " " + trouble
                                + ". Write a station as 210, 85 mm or 3 in; leave it empty if it is not known.");
    }
}
