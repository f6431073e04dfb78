/** A folder of flats: what its names and notes say, and the built-in sheet for it. */
@NullMarked
package dev.placket.packs.folder;

import org.jspecify.annotations.NullMarked;
