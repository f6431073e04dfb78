/** Style sheets of drawings: reads them and writes what they say onto each element. */
@NullMarked
package dev.placket.pictures.css;

import org.jspecify.annotations.NullMarked;
