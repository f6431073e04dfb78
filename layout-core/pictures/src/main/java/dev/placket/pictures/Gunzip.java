package dev.placket.pictures;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.raster.RasterFormat;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.zip.GZIPInputStream;

/** Unpacks a compressed drawing, stopping at the limit rather than at the end of memory. */
final class Gunzip {
  /** An unpacked drawing is parsed into a document some times its size. */
  private static final int DOCUMENT = 8;

  private Gunzip() {}

  static byte[] all(String name, byte[] packed, ReadLimits limits) throws PictureException {
    long most = Math.min(limits.bytes(), limits.memory() / DOCUMENT);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] part = new byte[1 << 14];
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      for (int n = in.read(part); n >= 0; n = in.read(part)) {
        if (out.size() + n > most) {
          throw PictureException.over(
              most == limits.bytes() ? ReadLimit.BYTES : ReadLimit.MEMORY,
              Fault.limit(name, "unpacks to more than " + most + " bytes, the limit")
                  .remedy("simplify the drawing")
                  .remedy("save it as plain SVG"));
        }
        out.write(part, 0, n);
      }
    } catch (IOException e) {
      throw new PictureException(
          Fault.content(name, "the compressed drawing is damaged").remedy("save it as plain SVG"),
          e);
    }
    byte[] plain = out.toByteArray();
    if (!RasterFormat.looksLikeXml(plain)) {
      throw new PictureException(
          Fault.content(name, "is compressed but contains no drawing")
              .remedy("export it as " + RasterFormat.list()));
    }
    return plain;
  }
}
