/** From a folder or a description to the files of a pack. */
@NullMarked
package dev.placket.packs.run;

import org.jspecify.annotations.NullMarked;
