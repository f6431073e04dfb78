package dev.placket.pictures.typeface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

/** Tables written by hand after OpenType 1.9, chapter 2 and GPOS. */
class PairKerningTest {
  /** One feature, one lookup of one part, which the caller writes. */
  private static byte[] table(String part) {
    return HexFormat.of()
        .parseHex(
            ("00010000 0000 000a 0018" // version, scripts (not read), features, lookups
                    + "0001 6b65726e 0008 0000 0001 0000" // features: kern at +8: lookup 0
                    + "0001 0004 0002 0000 0001 0008" // lookups: one, of type 2, its part at +8
                    + part)
                .replace(" ", ""));
  }

  @Test
  void pairsInAList() {
    // Format 1: coverage at 18; glyph 5 first; its set at 12: 7 stands 100 nearer.
    PairKerning kerning =
        PairKerning.of(table("0001 0012 0004 0000 0001 000c 0001 0007 ff9c" + "0001 0001 0005"));
    assertEquals(-100, kerning.between(5, 7));
    assertEquals(0, kerning.between(5, 8));
    assertEquals(0, kerning.between(7, 5));
  }

  @Test
  void pairsOfClasses() {
    // Format 2: glyphs 5 and 6 first; glyph 6 is of class 1, second glyph 9 of class 1.
    PairKerning kerning =
        PairKerning.of(
            table(
                "0002 0018 0004 0000 0022 002a 0002 0002"
                    + "0000 0000 0000 ffce" // rows of the classes 0 and 1
                    + "0002 0001 0005 0006 0000" // coverage by range
                    + "0001 0006 0001 0001" // class 1: glyph 6
                    + "0002 0001 0009 0009 0001")); // class 1: glyph 9, by range
    assertEquals(-50, kerning.between(6, 9));
    assertEquals(0, kerning.between(5, 9));
    assertEquals(0, kerning.between(6, 8));
    assertEquals(0, kerning.between(9, 6));
  }

  @Test
  void aDamagedTableHasNoPairs() {
    byte[] whole = table("0001 0012 0004 0000 0001 000c 0001 0007 ff9c 0001 0001 0005");
    for (int length = 0; length < whole.length; length++) {
      assertEquals(0, PairKerning.of(Arrays.copyOf(whole, length)).between(5, 7), "" + length);
    }
    assertTrue(PairKerning.of(new byte[0]).isEmpty());
  }

  /** SVG 1.1, 20.3.1: text of a font whose pair is kerned is narrower than its two signs. */
  @Test
  void textIsSetCloser() throws Exception {
    // Liberation Sans kerns A and V by some 150 of 2,048 units, as its table kern says.
    double both = width("AV");
    assertTrue(both < width("A") + width("V") - 3, both + "");
  }

  private static double width(String text) throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 400 100'>"
            + ("<text x='10' y='90' font-size='100'>" + text + "</text></svg>");
    Drawing d =
        (Drawing)
            PictureReader.read(
                PictureSource.of("a.svg", svg.getBytes(StandardCharsets.UTF_8)),
                ReadLimits.DEFAULT);
    return d.inkedBox().right() - d.inkedBox().left();
  }
}
