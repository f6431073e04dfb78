/** The command that makes ready copies of pictures. */
@NullMarked
package dev.placket.demo.prepare;

import org.jspecify.annotations.NullMarked;
