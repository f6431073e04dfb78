/** Other ways of packing, old and plain, to measure the fitter against. */
@NullMarked
package dev.placket.benchmarks.yardstick;

import org.jspecify.annotations.NullMarked;
