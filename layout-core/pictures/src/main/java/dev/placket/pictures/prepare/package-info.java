/**
 * Print-ready pictures: background cleared, pixels averaged, drawings rasterised, PNG encoded.
 *
 * <p>It uses {@code pictures}, never the reverse.
 *
 * <ul>
 *   <li><b>Each step is rows that can be read again</b> ({@code PixelRows}: {@code RasterRows},
 *       {@code ClearedRows}, {@code CroppedRows}, {@code AreaRows}). Clearing and encoding read
 *       their source two or three times instead of keeping it in memory.
 *   <li><b>Only a white background is cleared unasked.</b> What has another background may be a
 *       photograph, a label or a swatch and is placed whole. {@code Clearing.ANY_COLOUR} clears a
 *       background that four fifths of the border show, of any colour; what is left is the ink. On
 *       white only noise is lighter than the background; on a colour ink may be lighter or darker.
 *   <li><b>Edges are unmixed</b> ({@code Unmixing}) from the ink along the steepest way in ({@code
 *       EdgeInk}). A line finer than two pixels shows its ink nowhere and takes the drawing's flat
 *       ink, or black.
 *   <li><b>Pixels are averaged as encoded, not as light.</b> {@code LightSpaceTest} prints what
 *       lines of 0.09 to 0.5 mm keep at 200 pixels per inch: all of the ink, against 65 to 92 % in
 *       linear light. librsvg ({@code SecondRendererTest}) and poppler agree with our renderings.
 *   <li><b>Averages are summed down the columns first</b> ({@code ColumnSums}), in plain loops over
 *       {@code int} that the compiler vectorises, and across once for each new row. The benchmark
 *       {@code preparing} has times.
 *   <li><b>A size limit is met by interpolation.</b> {@code Weighing} encodes a picture at the soft
 *       limit, at the target and half-way; between, its size is a power of the density ({@code
 *       WeightCurve}), within some per cent. Extrapolation from small copies was a quarter off. All
 *       pictures share one density, so the smallest is as high as possible ({@code WeightPlan}).
 *   <li><b>PNGs are deflated at level 7, filtered or not by a trial</b> of every fourth band of 32
 *       rows ({@code PngPacking}): within 6 % of the best of many trials in a twentieth of their
 *       time. Higher levels take several times as long for some per cent. Bands of eight rows
 *       misjudged the filter. The same rows give the same bytes on one build of Java only, since
 *       deflate is the zlib of the JDK or of the system.
 *   <li><b>Few colours are an option</b> ({@code PaletteRows}): the smallest number that keeps the
 *       mean squared error below that of 60 dB, on white and premultiplied, with no pixel far off.
 *       A picture of at most 256 colours is left unchanged, so repeating the step changes nothing.
 *   <li><b>Enlarged pictures are judged by their detail</b> ({@code ResolvedShare.judged}): by the
 *       density that is resolved, from a share of 0.85 down, since sharp pictures measure 0.9 and
 *       more.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.prepare;

import org.jspecify.annotations.NullMarked;
