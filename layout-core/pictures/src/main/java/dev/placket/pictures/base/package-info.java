/**
 * Values that reading, preparing and programs share: sources, limits, refusals, notes, pixels by
 * rows, and what a drawing asks of what it is painted on.
 *
 * <ul>
 *   <li><b>A note states whether it changes the picture</b> ({@code PictureNote.changesPicture}).
 *       Such notes come first in the report, and a strict run refuses them. Other notes, such as
 *       "has 3 pages", never spoil a sample.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.base;

import org.jspecify.annotations.NullMarked;
