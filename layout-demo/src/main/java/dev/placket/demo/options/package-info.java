/** Options that several commands share. */
@NullMarked
package dev.placket.demo.options;

import org.jspecify.annotations.NullMarked;
