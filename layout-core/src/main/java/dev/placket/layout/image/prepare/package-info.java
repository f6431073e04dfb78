/** Makes pictures ready for print: clears, averages down, rasterises, encodes, weighs. */
@NullMarked
package dev.placket.layout.image.prepare;

import org.jspecify.annotations.NullMarked;
