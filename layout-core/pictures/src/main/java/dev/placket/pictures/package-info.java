/**
 * Reading and probing pictures: {@code PictureReader} decides by the bytes of a file what it is,
 * and returns a {@code RasterPicture} or a {@code Drawing}.
 *
 * <p>No module but this one knows formats or pixels. From the solver it uses one value of {@code
 * flat}, the drawing bounds that it measures, and the densities. A raster comes from {@code
 * raster}, its background and ink from {@code ink}.
 *
 * <p>{@code DrawingReader} parses with limits ({@code svg.parse}), applies style sheets ({@code
 * css}), mends references and faulty values ({@code svg.mend}), compares the drawing with the list
 * of what is drawn right ({@code svg}), rewrites it ({@code svg.rewrite}), sets its text ({@code
 * svg.font}), builds it with bridges of our own ({@code svg.bridge}), plans layers ({@code
 * svg.layer}) and measures ({@code svg.measure}). The comparison comes before rewriting, so notes
 * speak of what the designer exported.
 */
@NullMarked
package dev.placket.pictures;

import org.jspecify.annotations.NullMarked;
