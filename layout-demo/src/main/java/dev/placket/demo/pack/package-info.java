/** From what a description says to ruled sheets with their text, tables and flats. */
@NullMarked
package dev.placket.demo.pack;

import org.jspecify.annotations.NullMarked;
