/** {@code placket probe}: reports on a picture, as a table and as JSON. */
@NullMarked
package dev.placket.demo.probe;

import org.jspecify.annotations.NullMarked;
