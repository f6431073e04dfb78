package dev.placket.pictures.prepare;

import dev.placket.layout.units.Length;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Run in a process of its own: makes a very large line drawing, then makes that ready. */
final class LargePicture {
  static final int WIDTH = 10_000;
  static final int HEIGHT = 13_000;

  private LargePicture() {}

  /** Arguments: where to put the large picture, and the ready one. */
  public static void main(String[] args) throws Exception {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[0])))) {
      PngWriter.write(new Rings(), null, out);
    }
    RasterPicture raster =
        (RasterPicture) PictureReader.read(PictureSource.of(Path.of(args[0])), ReadLimits.DEFAULT);
    ReadyPicture ready = Preparing.raster(raster, Length.mm(180), 200, Clearing.FROM_BORDER);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])))) {
      PngWriter.write(ready.rows(), ready.stated(), out);
    }
  }

  /** Rings on white, 12 pixels wide with soft edges, none nearer the border than 100 pixels. */
  private static final class Rings implements PixelRows {
    @Override
    public int width() {
      return WIDTH;
    }

    @Override
    public int height() {
      return HEIGHT;
    }

    @Override
    public Cursor open() {
      return new Cursor() {
        private int y;

        @Override
        public void next(int[] row) {
          double down = (y++ + 0.5 - HEIGHT / 2.0) / 6400;
          for (int x = 0; x < WIDTH; x++) {
            double across = (x + 0.5 - WIDTH / 2.0) / 4900;
            double ring = Math.sqrt(across * across + down * down);
            double off = Math.abs(ring * 10 - Math.rint(ring * 10)) * 500;
            double ink = ring > 1.005 || ring < 0.05 ? 0 : Math.max(0, Math.min(1, 6.5 - off));
            row[x] = Grids.grey((int) Math.round(255 * (1 - ink)));
          }
        }
      };
    }
  }
}
