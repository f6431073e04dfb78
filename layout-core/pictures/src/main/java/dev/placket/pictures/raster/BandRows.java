package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.fault.ErrorText;
import dev.placket.pictures.fault.Fault;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import org.jspecify.annotations.Nullable;

/**
 * Rows from a decoder that hands out whole images: asked for one band of rows after another, so
 * that a large picture never stands in memory as a whole.
 */
final class BandRows implements RowReader {
  /** What the decoder of TIFFs says then. */
  private static final List<String> GUESSES =
      List.of(
          "Detected compression type",
          "Colors may look incorrect",
          "Missing JPEGTables",
          "8 bit ColorMap",
          "bad subsampling");

  private final String name;
  private final ImageReader reader;
  private final RasterHead head;
  private final int bandHeight;
  private final boolean multiplied;
  private final @Nullable JpegInks inks;
  private @Nullable String warning;
  private @Nullable SampleRows band;
  private int y;

  /**
   * Takes over the reader, whose input is set.
   *
   * @param multiplied whether alpha is multiplied into the colours
   * @param inks how four inks become colours; null for what the decoder makes of them
   */
  BandRows(
      String name,
      ImageReader reader,
      RasterHead head,
      int bandHeight,
      boolean multiplied,
      @Nullable JpegInks inks) {
    this.inks = inks;
    this.name = name;
    this.reader = reader;
    this.head = head;
    this.bandHeight = bandHeight;
    this.multiplied = multiplied;
    // The decoder of JPEGs says so of every picture in printing colours, which has a note already.
    if (head.format().equals("TIFF")) {
      reader.addIIOReadWarningListener((from, words) -> warning = guess(words) ? words : warning);
    }
  }

  /** Whether a decoder says that it goes by a guess of its own, which may give other pixels. */
  private static boolean guess(String words) {
    return GUESSES.stream().anyMatch(words::contains);
  }

  @Override
  public int width() {
    return head.width();
  }

  @Override
  public int height() {
    return head.height();
  }

  @Override
  public void next(int[] row) throws PictureException {
    if (y == height()) {
      throw new IllegalStateException("there are only " + y + " rows");
    }
    SampleRows b = band;
    try {
      if (b == null || y % bandHeight == 0) {
        band = null;
        b = new SampleRows(read(), multiplied);
        band = b;
      }
      b.row(y % bandHeight, row);
    } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError e) {
      // A decoder that believes a lying count asks for one array beyond all memory; nothing is
      // lost.
      band = null;
      throw damaged(name, head.format(), e);
    }
    y++;
  }

  static PictureException damaged(String name, String format, Throwable e) {
    return new PictureException(
        Fault.content(
                name,
                "this "
                    + format
                    + " is damaged or of a kind that is not read ("
                    + ErrorText.by(e)
                    + ")")
            .in("pixels")
            .remedy("export it again as PNG"),
        e);
  }

  private BufferedImage read() throws IOException {
    ImageReadParam param = reader.getDefaultReadParam();
    int rows = Math.min(bandHeight, height() - y);
    boolean all = rows == height();
    if (!all) {
      param.setSourceRegion(new Rectangle(0, y, width(), rows));
    }
    JpegInks own = inks;
    BufferedImage image = own == null ? reader.read(0, param) : own.read(reader, param);
    String guessed = warning;
    if (guessed != null) {
      throw new IOException(guessed);
    }
    if (image.getWidth() != width() || image.getHeight() != rows) {
      throw new IOException("another size than its header states");
    }
    return image;
  }

  @Override
  public void close() {
    band = null;
    reader.dispose();
  }
}
