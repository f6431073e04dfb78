/** Pixels per inch and per metre, their states, and the pixels to ask for. */
@NullMarked
package dev.placket.layout.density;

import org.jspecify.annotations.NullMarked;
