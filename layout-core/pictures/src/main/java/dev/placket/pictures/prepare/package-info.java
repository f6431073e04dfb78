/** Makes pictures ready for print: clears, averages down, rasterises, encodes, weighs. */
@NullMarked
package dev.placket.pictures.prepare;

import org.jspecify.annotations.NullMarked;
