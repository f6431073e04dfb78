/** Our decoding of public pictures beside that of second libraries. */
@NullMarked
package dev.placket.benchmarks.rasters;

import org.jspecify.annotations.NullMarked;
