/** Programs from outside, timed beside work of our own, and the lines of a table of both. */
@NullMarked
package dev.placket.benchmarks.outside;

import org.jspecify.annotations.NullMarked;
