/** Measuring the fitter: reference sheets, outside yardsticks, cold starts. */
@NullMarked
package dev.placket.benchmarks;

import org.jspecify.annotations.NullMarked;
