/** The only package that knows picture files and pixels. */
@NullMarked
package dev.placket.pictures;

import org.jspecify.annotations.NullMarked;
