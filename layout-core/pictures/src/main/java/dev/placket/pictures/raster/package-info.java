/**
 * Raster formats: headers, decoders, and the rows of a file as often as they are asked for.
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
 *   <li><b>A format is one constant of {@code RasterFormat}</b> with its first bytes, name endings,
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
 *       JDK: that of a PNG here ({@code ColourProfile}), that of a JPEG in CMYK too ({@code
 *       JpegInks}), the others by their decoders. A profile that leaves a cube of colours unchanged
 *       counts as sRGB, whatever its name. A PNG's gAMA and cHRM are noted, not applied ({@code
 *       StatedColours}), where they move a colour by more than 8 levels and no profile or sRGB
 *       chunk overrides them; the usual gamma of 1/2.2 stays within 7.
 *   <li><b>A JPEG is handed on as it is</b> ({@code JpegCopy}) where its pixels need no change: the
 *       same tables and coded pixels, without Exif, XMP and comments.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.raster;

import org.jspecify.annotations.NullMarked;
