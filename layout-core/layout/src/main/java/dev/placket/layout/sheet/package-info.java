/** Paper, margins, tracks, labelled cells and windows, resolved to rectangles on the sheet. */
@NullMarked
package dev.placket.layout.sheet;

import org.jspecify.annotations.NullMarked;
