/** Lengths and rectangles on the sheet; every length names its unit. */
@NullMarked
package dev.placket.layout.units;

import org.jspecify.annotations.NullMarked;
