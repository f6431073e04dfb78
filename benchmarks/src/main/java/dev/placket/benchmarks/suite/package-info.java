/** Drawings of a public suite, rendered here and by a second program, held against its pictures. */
@NullMarked
package dev.placket.benchmarks.suite;

import org.jspecify.annotations.NullMarked;
