/**
 * Text on a sheet: typefaces, blocks, line breaks and cells.
 *
 * <p><b>Lines break by a part of UAX #14 of our own</b> ({@code LineBreaks}): wherever Unicode 16
 * allows it at an East Asian character, else at blanks alone, so that Latin and Korean words stay
 * whole. The break iterator of a JDK has other data in another JDK; ICU4J has the same on all, but
 * weighs 14 MB, for a table of 4 kB. A test compares the breaks of all triples of signs with
 * ICU4J's, and the table with its property.
 */
@NullMarked
package dev.placket.packs.text;

import org.jspecify.annotations.NullMarked;
