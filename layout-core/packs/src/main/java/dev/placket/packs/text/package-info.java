/** Text on a sheet: typefaces, blocks, line breaks and cells. */
@NullMarked
package dev.placket.packs.text;

import org.jspecify.annotations.NullMarked;
