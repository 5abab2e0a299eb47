package dev.ledgerwing.core.file.table;

/**
 * Something to know about one cell.
 *
 * @param row counted from 1 as a spreadsheet counts it: a row with line breaks in its cells is one row
 * @param column counted from 1
 * @param text the cell as found
 * @param sentence what a builder needs to know about it
 */
public record CellNote(int row, int column, String text, String sentence) {}
