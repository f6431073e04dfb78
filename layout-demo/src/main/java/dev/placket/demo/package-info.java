/** The command {@code placket}. */
@NullMarked
package dev.placket.demo;

import org.jspecify.annotations.NullMarked;
