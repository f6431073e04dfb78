/** Writes the manual page and the completion of a shell, from the commands themselves. */
@NullMarked
package dev.placket.demo.manual;

import org.jspecify.annotations.NullMarked;
