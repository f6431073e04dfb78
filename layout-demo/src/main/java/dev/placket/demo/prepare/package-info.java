/** The command {@code placket prepare}: writes print-ready copies of pictures. */
@NullMarked
package dev.placket.demo.prepare;

import org.jspecify.annotations.NullMarked;
