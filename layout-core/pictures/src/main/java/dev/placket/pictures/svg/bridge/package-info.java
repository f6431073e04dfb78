/** What Batik makes of an element, where its own way is not that of the standard. */
@NullMarked
package dev.placket.pictures.svg.bridge;

import org.jspecify.annotations.NullMarked;
