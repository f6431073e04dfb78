/**
 * From a folder or a description to the files of a pack: compose, fit, prepare, draw, report.
 *
 * <p><b>There is one way through.</b> A folder and a description become a {@code Composition}
 * ({@code FolderComposition}, {@code DescribedComposition}); {@code Run} does the rest for both.
 * {@code Packs} is the entry point for programs, and {@code RunOptions} states what is written
 * where. The workbooks share the options, the check of files ({@code RunFiles}) and the report.
 *
 * <p><b>One scale on all sheets</b> ({@code one-scale}; {@code OneScale}): every sheet is fitted by
 * itself, then again with the group at the scale of the sheet on which it came out smallest. What
 * fits at a scale fits at a smaller one, unless a minimum size forbids it; the run reports that.
 *
 * <p><b>A sheet that continues is ruled twice</b>: once to fit and, where its flats need further
 * sheets, again with their number, since every sheet states which of how many it is. Rulings do not
 * depend on that text, so the fit stays valid.
 *
 * <p><b>A file over the size limit is also written in parts</b> ({@code PackParts}): whole sheets
 * in their order, as many in each part as the limit allows, which gives the fewest parts.
 */
@NullMarked
package dev.placket.packs.run;

import org.jspecify.annotations.NullMarked;
