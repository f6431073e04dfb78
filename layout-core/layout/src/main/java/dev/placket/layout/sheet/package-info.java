/**
 * Paper, margins, tracks, labelled cells and windows, resolved to rectangles on the sheet.
 *
 * <p><b>Paper sizes</b> are the constants of {@code PaperSize.NAMED}. Options, descriptions, help
 * and the codes of worksheets all derive from that list.
 *
 * <p><b>Windows name grid lines; labelled cells have rectangles.</b> Two windows act as one room
 * only where they share a line by its index, because equal coordinates may be equal by chance.
 * Labelled corners inside a window need no grid lines of their own.
 */
@NullMarked
package dev.placket.layout.sheet;

import org.jspecify.annotations.NullMarked;
