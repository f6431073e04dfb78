package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.ByteBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a PNG states of its colours without a profile is noted where it is visible. */
class StatedColoursTest {
  /** The usual 45455 is within 8 levels of sRGB's curve, 1.0 is far off; sRGB goes before both. */
  @ParameterizedTest
  @CsvSource({
    "45455, false, false, 0", "100000, false, false, 1", "35000, false, false, 1",
    "100000, false, true, 0", "0, true, false, 1", "45455, true, true, 0"
  })
  void isNotedWhereItMatters(int gamma, boolean wide, boolean srgb, long notes) throws Exception {
    PngWriter png = new PngWriter(4, 1, 8, 2);
    if (srgb) {
      png.before.add(PngWriter.chunk("sRGB", new byte[] {0}));
    }
    if (gamma > 0) {
      png.before.add(PngWriter.chunk("gAMA", ByteBuffer.allocate(4).putInt(gamma).array()));
    }
    if (wide) {
      // Display P3's primaries with D65 (SMPTE EG 432-1), in hundred-thousandths.
      ByteBuffer b = ByteBuffer.allocate(32);
      for (int n : new int[] {31270, 32900, 68000, 32000, 26500, 69000, 15000, 6000}) {
        b.putInt(n);
      }
      png.before.add(PngWriter.chunk("cHRM", b.array()));
    }
    byte[] bytes = png.write(new int[] {0, 0, 0, 90, 20, 30, 200, 10, 10, 0, 80, 255});
    PictureProbe probe = PictureReader.probe(PictureSource.of("a.png", bytes), ReadLimits.DEFAULT);
    assertEquals(
        notes,
        probe.notes().stream().filter(n -> n.changesPicture() && n.text().contains("gAMA")).count(),
        probe.notes()::toString);
  }

  /** sRGB's own primaries and a gamma of 1/2.2: the two curves part by at most 7 levels. */
  @org.junit.jupiter.api.Test
  void itsOwnPrimariesChangeNothing() {
    long[] own = {31270, 32900, 64000, 33000, 30000, 60000, 15000, 6000};
    assertEquals(0, StatedColours.off(0, own, false));
    assertEquals(0, StatedColours.off(0, new long[8], false));
  }
}
