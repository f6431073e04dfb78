/** From a description to ruled sheets with their text, tables and flats. */
@NullMarked
package dev.placket.packs.compose;

import org.jspecify.annotations.NullMarked;
