/** The terminal: messages, widths, exit codes. */
@NullMarked
package dev.placket.demo.console;

import org.jspecify.annotations.NullMarked;
