package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import java.io.IOException;
import java.util.Arrays;

/**
 * The smallest kind of PNG that holds a picture without loss (PNG, third edition, W3C 2025,
 * 11.2.1): grey, palette, grey with alpha, RGB or RGBA, with 1 to 8 bits a sample.
 */
final class PngKind {
  static final int GREY = 0;
  static final int RGB = 2;
  static final int PALETTE = 3;
  static final int GREY_ALPHA = 4;
  static final int RGB_ALPHA = 6;
  private static final int OPAQUE = 0xFF000000;

  final int type;
  final int depth;
  final int channels;

  /** The colours of a palette in order; empty for other kinds. */
  final int[] palette;

  private final ColourTable table;

  private PngKind(int type, int depth, int[] palette, ColourTable table) {
    this.type = type;
    this.depth = depth;
    this.palette = palette;
    this.table = table;
    this.channels =
        switch (type) {
          case RGB -> 3;
          case GREY_ALPHA -> 2;
          case RGB_ALPHA -> 4;
          default -> 1;
        };
  }

  /** Reads all rows once. O(pixels). */
  static PngKind of(PixelRows rows) throws PictureException {
    Seen seen = new Seen();
    int[] row = new int[rows.width()];
    int[] above = new int[rows.width()];
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < rows.height(); y++) {
        in.next(row);
        if (y == 0 || !Arrays.equals(row, above)) {
          System.arraycopy(row, 0, above, 0, row.length);
          seen.add(row);
        }
      }
    }
    return choose(seen.table, seen.colour == 0, (seen.alpha & OPAQUE) == OPAQUE);
  }

  /** What the rows so far hold. */
  private static final class Seen {
    private final ColourTable table = new ColourTable();

    /** Zero while all are grey. */
    private int colour;

    /** All of its upper bits set while all are opaque. */
    private int alpha = -1;

    void add(int[] row) {
      int last = ~row[0];
      for (int p : row) {
        // Neighbours are alike most of the time.
        if (p != last) {
          last = p;
          add(p);
        }
      }
    }

    private void add(int argb) {
      colour |= (argb ^ argb >> 8) & 0xFFFF;
      alpha &= argb;
      if (table.complete()) {
        table.add(argb);
      }
    }
  }

  private static PngKind choose(ColourTable table, boolean grey, boolean opaque) {
    if (!table.complete()) {
      int type = grey ? opaque ? GREY : GREY_ALPHA : opaque ? RGB : RGB_ALPHA;
      return new PngKind(type, 8, new int[0], table);
    }
    int[] colours = table.inOrder();
    int indexed = bits(colours.length);
    int greyed = grey && opaque ? greyBits(colours) : 9;
    return greyed <= indexed
        ? new PngKind(GREY, greyed, new int[0], table)
        : new PngKind(PALETTE, indexed, colours, table);
  }

  private static int bits(int colours) {
    return colours <= 2 ? 1 : colours <= 4 ? 2 : colours <= 16 ? 4 : 8;
  }

  /** The fewest bits in which every grey is exact: samples are spread evenly over 0 to 255. */
  private static int greyBits(int[] colours) {
    for (int bits = 1; bits < 8; bits *= 2) {
      int step = 255 / ((1 << bits) - 1);
      boolean exact = true;
      for (int c : colours) {
        exact &= (c & 255) % step == 0;
      }
      if (exact) {
        return bits;
      }
    }
    return 8;
  }

  /** Bytes of a packed row. */
  int rowBytes(int width) {
    return (int) (((long) width * channels * depth + 7) / 8);
  }

  /** Takes the packed bytes of a row, which change with the next. */
  interface PackedRow {
    void take(int y, byte[] packed) throws IOException;
  }

  /** Packs all rows, one after the other. */
  void read(PixelRows rows, PackedRow sink) throws PictureException, IOException {
    int w = rows.width();
    int[] row = new int[w];
    int[] above = new int[w];
    byte[] packed = new byte[rowBytes(w)];
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < rows.height(); y++) {
        in.next(row);
        if (y == 0 || !Arrays.equals(row, above)) {
          pack(row, w, packed);
          System.arraycopy(row, 0, above, 0, w);
        }
        sink.take(y, packed);
      }
    }
  }

  private void pack(int[] row, int width, byte[] into) {
    switch (type) {
      case RGB -> packColours(row, width, into);
      case RGB_ALPHA -> packClearColours(row, width, into);
      case GREY_ALPHA -> {
        for (int x = 0; x < width; x++) {
          into[2 * x] = (byte) row[x];
          into[2 * x + 1] = (byte) (row[x] >>> 24);
        }
      }
      default -> packSamples(row, width, into);
    }
  }

  private static void packColours(int[] row, int width, byte[] into) {
    for (int x = 0; x < width; x++) {
      into[3 * x] = (byte) (row[x] >> 16);
      into[3 * x + 1] = (byte) (row[x] >> 8);
      into[3 * x + 2] = (byte) row[x];
    }
  }

  private static void packClearColours(int[] row, int width, byte[] into) {
    for (int x = 0; x < width; x++) {
      into[4 * x] = (byte) (row[x] >> 16);
      into[4 * x + 1] = (byte) (row[x] >> 8);
      into[4 * x + 2] = (byte) row[x];
      into[4 * x + 3] = (byte) (row[x] >>> 24);
    }
  }

  private void packSamples(int[] row, int width, byte[] into) {
    int last = row[0];
    int sample = sample(last);
    int perByte = 8 / depth;
    int bits = 0;
    for (int x = 0; x < width; x++) {
      if (row[x] != last) {
        last = row[x];
        sample = sample(last);
      }
      bits = bits << depth | sample;
      if ((x + 1) % perByte == 0) {
        into[x / perByte] = (byte) bits;
        bits = 0;
      }
    }
    int over = width % perByte;
    if (over != 0) {
      into[width / perByte] = (byte) (bits << depth * (perByte - over));
    }
  }

  private int sample(int argb) {
    return type == PALETTE ? table.index(argb) : (argb & 255) >> (8 - depth);
  }
}
