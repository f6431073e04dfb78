/** The only package that knows picture files and pixels. */
@NullMarked
package dev.placket.layout.image;

import org.jspecify.annotations.NullMarked;
