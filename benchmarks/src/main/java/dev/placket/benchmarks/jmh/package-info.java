/** The warm solve under JMH. */
@NullMarked
package dev.placket.benchmarks.jmh;

import org.jspecify.annotations.NullMarked;
