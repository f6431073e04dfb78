/** Which parts of SVG are drawn right, as data, and the audit of a drawing against it. */
@NullMarked
package dev.placket.pictures.svg;

import org.jspecify.annotations.NullMarked;
