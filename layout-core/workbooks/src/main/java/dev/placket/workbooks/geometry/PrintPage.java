package dev.placket.workbooks.geometry;

/**
 * One printed page of a worksheet.
 *
 * @param cells what is on this page whatever the reader, within the tolerance of columns and rows
 * @param percent the printed size of what the worksheet holds, in hundredths
 * @param left where the first of these columns begins on the paper, in points
 * @param top where the first of these rows begins on the paper, in points
 */
public record PrintPage(CellRange cells, int percent, double left, double top) {}
