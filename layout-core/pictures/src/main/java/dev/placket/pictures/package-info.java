/**
 * Picture files: reading them within limits, drawing bounds, refusals and notes.
 *
 * <p>No other package knows formats or pixels. From the solver this package uses one value of
 * {@code flat}, the drawing bounds that it measures, and the densities.
 *
 * <h2>Rasters</h2>
 *
 * <ul>
 *   <li><b>A picture is rows.</b> Background and ink ({@code InkFinder}) are found from rows, so a
 *       PNG that is not interlaced is probed at any size in a small heap. Other formats come from
 *       decoders in bands of rows. The memory that a whole picture needs is estimated from its
 *       header and compared with {@code ReadLimits.memory} first.
 *   <li><b>Headers are read by hand</b> ({@code Png}, {@code Jpeg}, {@code Tiff}, {@code Gif},
 *       {@code Bmp}, {@code Webp}): libraries take ten times as long, and Commons Imaging, tried
 *       for TIFF tags, keeps fractions but throws unchecked exceptions for some 400 of 1.3 million
 *       damaged files. It is the second reader in tests. Only tags for size, density and
 *       orientation are read, so places, authors and software names of a file reach no output.
 *   <li><b>A format is one constant of {@code Format}</b> with its first bytes, name endings,
 *       header class and decoder.
 *   <li><b>TIFF is read by a list of the kinds that the decoder gets right</b> ({@code TiffKind}:
 *       meaning of samples × bits × format × compression × planes × extra samples), measured
 *       against ImageMagick, libtiff and libvips by the benchmark {@code rasters}. All else is
 *       refused by name, since the decoder returns black or noise for some kinds without an error.
 *       Strips that are missing or end behind the file are refused first ({@code TiffStrips}), and
 *       so is what the decoder reports as a guess ({@code BandRows}). Premultiplied alpha is
 *       divided out here; the decoder passes it on unchanged. BigTIFF is refused: it needs another
 *       reader, and no picture of a pack has 4 GB.
 *   <li><b>BMP too</b> ({@code BmpKind}): masks of odd widths, 16-bit alpha and embedded PNG or
 *       JPEG are refused. So is a plain 32-bit pixel whose fourth byte varies, since some programs
 *       mean alpha by it and others do not.
 *   <li><b>WebP is read if it is lossless</b>, and refused otherwise: the decoder misses the
 *       colours of lossy frames (RFC 6386 defines every bit), and no other pure-Java decoder is in
 *       Maven Central.
 *   <li>Decoders take a GIF's last colour for the transparent one where that is outside its table
 *       ({@code Gif.decodable}). A PNG is read on to the checksums behind its pixels.
 *   <li><b>Colour profiles are applied while rows are read</b>, by the colour management of the
 *       JDK: that of a PNG here ({@code ColourProfile}), the others by their decoders. A profile
 *       that leaves a cube of colours unchanged counts as sRGB, whatever its name. A PNG's gAMA and
 *       cHRM are noted, not applied ({@code StatedColours}), where they move a colour by more than
 *       8 levels and no profile or sRGB chunk overrides them; the usual gamma of 1/2.2 stays within
 *       7.
 *   <li><b>Pale pictures are not blank</b> ({@code InkFinder.pale}): where nothing stands out from
 *       a pale background, the whole picture counts, unless every pixel is pure white or
 *       transparent. A swatch may be pure white ({@code PictureReader.readSwatch}).
 *   <li><b>A frame line counts as ink.</b> It is reported with the bounds inside it, and nothing is
 *       cut.
 * </ul>
 *
 * <h2>Drawings</h2>
 *
 * <p>{@code DrawingReader} parses with limits ({@code SvgParser}), applies style sheets ({@code
 * css}), mends references and faulty values, compares the drawing with the list of what is drawn
 * right ({@code svg}), rewrites it ({@code svg.rewrite}), builds it with bridges of our own ({@code
 * svg.bridge}), plans layers and measures. The comparison comes before rewriting, so notes speak of
 * what the designer exported.
 *
 * <ul>
 *   <li><b>Memory is estimated from the text</b> ({@code DrawingMemory}, limit {@code memory}),
 *       each use counted, so a path of ten million segments is refused before Batik builds it. The
 *       figures are the smallest heaps in which drawings of one kind were read, hence above the
 *       need.
 *   <li><b>Drawing is counted in steps before anything is drawn</b> ({@code DrawingWork}, limit
 *       {@code steps}): segments, crossings of scan lines, area, pairs of segments that may cross
 *       in a clip, pixels of masks. Time and memory of the renderers grow with them, and no clock
 *       is read. Masks have at most 3,000 pixels along the view's longest side ({@code
 *       MaskedNode}): Batik would choose as many as the page's finest unit has, which took a minute
 *       for one mask.
 *   <li><b>What Batik cannot accept is replaced first</b>: references to missing parts ({@code
 *       References}, each with a note), filters, which are not drawn, and gradients and patterns
 *       whose numbers overflow or have no inverse ({@code PaintMending}; a mean colour where they
 *       are too fine).
 *   <li><b>Overlaps under one opacity, blend modes and masks are layers</b> ({@code LayerPlan},
 *       {@code NodePainter}; Batik's own painting is not used): pixels in renderings ({@code
 *       PixelLayers}), a transparency group with its paths in the PDF. What does not overlap is
 *       folded into its paints, so most pages need no group. Colours worked out by hand test both.
 *   <li><b>Text is set in given typefaces or Liberation Sans</b> ({@code Typefaces}, OFL, a
 *       resource), never in a font of the machine, so bounds and look are the same everywhere. A
 *       note names what was requested and not given. Typefaces enter the document as the {@code
 *       font} elements of SVG 1.1 ({@code FontElements}, outlines by FontBox), because {@code
 *       Font.createFont} writes a temporary file. A character that no typeface has, and a script
 *       that needs shaping, are refused: they would come out wrong silently.
 *   <li>Typefaces are matched by weight and style (CSS Fonts 4, 5.2; {@code FaceMatching}) among
 *       those given. No bold is made by thickening; a missing one is noted. Kerning pairs come from
 *       the typeface ({@code PairKerning} for GPOS, FontBox for the older table) as {@code hkern};
 *       ligatures are not set.
 *   <li><b>The stated size shows what SVG says</b>: {@code preserveAspectRatio} of the root moves,
 *       crops or stretches the view ({@code SvgSize}). A size within half a per cent of the
 *       proportions of the viewBox counts as rounding and shows the viewBox alone.
 *   <li><b>A note states whether it changes the picture</b> ({@code PictureNote.changesPicture}).
 *       Such notes come first in the report, and a strict run refuses them. Other notes, such as
 *       "has 3 pages", never spoil a sample.
 * </ul>
 */
@NullMarked
package dev.placket.pictures;

import org.jspecify.annotations.NullMarked;
