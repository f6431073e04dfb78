/** Flats with their files: roles, captions, scale lines, groups. */
@NullMarked
package dev.placket.packs.flats;

import org.jspecify.annotations.NullMarked;
