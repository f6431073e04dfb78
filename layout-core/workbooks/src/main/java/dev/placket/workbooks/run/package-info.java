/**
 * Flats from a folder or a description onto the worksheets of a workbook.
 *
 * <p>{@code WorkbookFlats.Source} is where flats come from: a folder ({@code FolderSource}) or a
 * description ({@code DescribedSource}). All else is the same for both.
 */
@NullMarked
package dev.placket.workbooks.run;

import org.jspecify.annotations.NullMarked;
