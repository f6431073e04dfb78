/**
 * Writes the manual page and the completion of a shell, from the commands themselves.
 *
 * <p>{@code ManPage} is some eighty lines over picocli's model: picocli's own generator writes
 * AsciiDoc, and turning that into a page would bring JRuby into every build.
 */
@NullMarked
package dev.placket.demo.manual;

import org.jspecify.annotations.NullMarked;
