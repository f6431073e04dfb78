/** The reference sheets as values, and reading them. */
@NullMarked
package dev.placket.benchmarks.pages;

import org.jspecify.annotations.NullMarked;
