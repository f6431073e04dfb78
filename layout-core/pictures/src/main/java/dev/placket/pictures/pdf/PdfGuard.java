package dev.placket.pictures.pdf;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.filter.FilterFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;

/** Refuses what unpacks to more than the limits, before anything of it is used. */
final class PdfGuard {
  /** Filters whose output can be far larger than their input. */
  private static final Set<COSName> PACKED =
      Set.of(
          COSName.FLATE_DECODE,
          COSName.FLATE_DECODE_ABBREVIATION,
          COSName.LZW_DECODE,
          COSName.LZW_DECODE_ABBREVIATION,
          COSName.RUN_LENGTH_DECODE,
          COSName.RUN_LENGTH_DECODE_ABBREVIATION,
          COSName.ASCII85_DECODE,
          COSName.ASCII85_DECODE_ABBREVIATION,
          COSName.ASCII_HEX_DECODE,
          COSName.ASCII_HEX_DECODE_ABBREVIATION);

  /** Pictures that need a decoder which is not there. */
  private static final Set<COSName> UNREAD = Set.of(COSName.JPX_DECODE, COSName.JBIG2_DECODE);

  private final String name;
  private final ReadLimits limits;

  PdfGuard(String name, ReadLimits limits) {
    this.name = name;
    this.limits = limits;
  }

  /** Checks every stream of a document. */
  void check(COSDocument document) throws PictureException {
    Set<COSObjectKey> keys = document.getXrefTable().keySet();
    if (keys.size() > limits.elements()) {
      throw PictureException.over(
          ReadLimit.ELEMENTS,
          Fault.limit(name, "has " + keys.size() + " objects, the limit is " + limits.elements()));
    }
    for (COSObjectKey key : keys) {
      COSObject object = document.getObjectFromPool(key);
      if (object != null && object.getObject() instanceof COSStream stream) {
        check(stream);
      }
    }
  }

  private void check(COSStream stream) throws PictureException {
    if (COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE))) {
      long pixels =
          Math.max(0L, stream.getInt(COSName.WIDTH)) * Math.max(0L, stream.getInt(COSName.HEIGHT));
      if (pixels > limits.pixels()) {
        throw PictureException.over(
            ReadLimit.PIXELS,
            Fault.limit(
                name, "has a picture of " + pixels + " pixels, the limit is " + limits.pixels()));
      }
      limits.checkMemory(name, 4 * pixels);
    }
    List<COSName> filters = filters(stream);
    if (!filters.isEmpty() && COSName.FLATE_DECODE.equals(filters.get(0))) {
      checkWhole(stream);
    }
    byte[] bytes = null;
    for (int i = 0; i < filters.size() && PACKED.contains(filters.get(i)); i++) {
      bytes = unpacked(stream, filters.get(i), i, bytes, i + 1 < filters.size());
    }
  }

  /** What is cut short or damaged would be drawn as far as it can be unpacked, without a word. */
  private void checkWhole(COSStream stream) throws PictureException {
    Inflater inflater = new Inflater();
    byte[] out = new byte[1 << 14];
    long left = limits.memory();
    try (InputStream in = stream.createRawInputStream()) {
      inflater.setInput(in.readAllBytes());
      for (int n = 1; n > 0 && left > 0; left -= n) {
        n = inflater.inflate(out);
      }
      if (left > 0 && !inflater.finished()) {
        throw damaged();
      }
    } catch (IOException | DataFormatException e) {
      throw damaged();
    } finally {
      inflater.end();
    }
  }

  private PictureException damaged() {
    return new PictureException(
        Fault.content(name, "has a damaged stream, so that parts of it are missing")
            .remedy("export it again"));
  }

  private byte @Nullable [] unpacked(
      COSStream stream, COSName filter, int index, byte @Nullable [] from, boolean keep)
      throws PictureException {
    Counted out = new Counted(limits.memory(), keep);
    try (InputStream in =
        from == null ? stream.createRawInputStream() : new ByteArrayInputStream(from)) {
      Filter decoder = FilterFactory.INSTANCE.getFilter(filter);
      decoder.decode(in, out, stream, index);
    } catch (TooLarge e) {
      throw PictureException.over(
          ReadLimit.MEMORY,
          Fault.limit(
                  name,
                  "has a stream that unpacks to more than "
                      + (limits.memory() >> 20)
                      + " MiB, the limit")
              .remedy("export the page anew, with pictures of fewer pixels"));
    } catch (IOException | RuntimeException e) {
      // What cannot be unpacked is refused where it is used; much of a file is not.
      return new byte[0];
    }
    return out.bytes();
  }

  static List<COSName> filters(COSStream stream) {
    COSBase filters = stream.getFilters();
    if (filters instanceof COSName one) {
      return List.of(one);
    }
    return filters instanceof COSArray array
        ? array.toCOSNameStringList().stream().map(COSName::getPDFName).toList()
        : List.of();
  }

  /** A picture on the page that no decoder here reads. */
  static void checkPicture(PDImageXObject image) throws IOException {
    COSDictionary stream = image.getCOSObject();
    for (COSName filter : filters((COSStream) stream)) {
      if (UNREAD.contains(filter)) {
        throw new UnreadPicture(filter.equals(COSName.JPX_DECODE) ? "JPEG 2000" : "JBIG2");
      }
    }
  }

  /** A picture in a format without decoder. */
  static final class UnreadPicture extends IOException {
    private static final long serialVersionUID = 1;

    UnreadPicture(String format) {
      super(format);
    }
  }

  private static final class TooLarge extends RuntimeException {
    private static final long serialVersionUID = 1;

    TooLarge() {
      super("too large", null, false, false);
    }
  }

  private static final class Counted extends OutputStream {
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private final boolean keep;
    private long left;

    Counted(long most, boolean keep) {
      this.left = most;
      this.keep = keep;
    }

    byte[] bytes() {
      return kept.toByteArray();
    }

    @Override
    public void write(int b) {
      count(1);
      if (keep) {
        kept.write(b);
      }
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
      count(length);
      if (keep) {
        kept.write(bytes, from, length);
      }
    }

    private void count(int more) {
      left -= more;
      if (left < 0) {
        throw new TooLarge();
      }
    }
  }
}
