/**
 * From a description to ruled sheets with their text, tables and flats.
 *
 * <p>There are three steps. {@code Contents} checks the description against itself. {@code
 * SheetPlan} lays grids and tables, which determines the number of sheets. {@code SheetMaker} sets
 * text and passes {@code ComposedSheet}s to the same fit and drawing as the sheet of a folder.
 *
 * <ul>
 *   <li><b>Shared edges are one number</b> ({@code Snap}): a rule between two areas is drawn once,
 *       also between header and body.
 *   <li><b>Lines on filled areas are named, not guessed</b> ({@code lines} beside {@code fills};
 *       {@code Fills}). They turn white where black has less than 3:1 to any fill. An outline stays
 *       black, since it also lies on the paper. What cannot keep 3:1 either way is refused.
 *   <li><b>Samples are judged before anything is laid</b> ({@code SampleBook}); their photographs
 *       become flats of their sheets ({@code SamplePhotographs}), so that the fit, the density and
 *       the callouts are those of any flat.
 *   <li><b>One setter serves sheets and worksheets</b> ({@code FlatSetter}).
 * </ul>
 */
@NullMarked
package dev.placket.packs.compose;

import org.jspecify.annotations.NullMarked;
