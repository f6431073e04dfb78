/**
 * Flats with their files: roles, captions, scale lines, groups.
 *
 * <p><b>A front of few pixels leads all the same.</b> Minimum sizes of other flats are at most 0.7
 * of the front's maximum, so the rule that the front is the largest, which a folder cannot turn
 * off, refuses nothing.
 *
 * <p><b>The line on a scale names what it compares with</b> ({@code ScaleLines}): the front of the
 * group, else its largest flat. Units that differ within a group are asked about.
 *
 * <p><b>Spacing is one value for folders, descriptions and worksheets</b> ({@code SheetSpacing}).
 */
@NullMarked
package dev.placket.packs.flats;

import org.jspecify.annotations.NullMarked;
