package dev.placket.pictures.typeface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A drawing's text is set in the typeface that is given or comes along, never in one of the
 * machine's. The outline of H in Liberation Sans 2.1.5, as its glyf table states it: 168 to 1312
 * across, 0 to 1409 up, 2048 units to the em.
 */
class TypefacesTest {
  private static final int EM = 2048;

  private static Drawing drawn(String family, Typefaces typefaces) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 2048 2048'>"
            + "<text x='0' y='2000' font-size='2048'"
            + (family.isEmpty() ? "" : " font-family='" + family + "'")
            + ">H</text></svg>";
    PictureSource source = PictureSource.of("h.svg", svg.getBytes(StandardCharsets.UTF_8));
    return (Drawing) PictureReader.read(source, ReadLimits.DEFAULT, typefaces);
  }

  private static void assertInk(Drawing drawing, double perEm) {
    InkedBox ink = drawing.inkedBox();
    assertEquals(168 * perEm, ink.left(), 1);
    assertEquals(1312 * perEm, ink.right(), 1);
    assertEquals(2000 - 1409 * perEm, ink.top(), 1);
    assertEquals(2000, ink.bottom(), 1);
  }

  /** The shipped typeface under another name, with as many units more or less to the em. */
  private static byte[] renamed(String family, int unitsPerEm) throws Exception {
    try (InputStream in = Typefaces.class.getResourceAsStream("LiberationSans-Regular.ttf")) {
      byte[] font = java.util.Objects.requireNonNull(in).readAllBytes();
      byte[] old = "Liberation Sans".getBytes(StandardCharsets.UTF_16BE);
      byte[] now = family.getBytes(StandardCharsets.UTF_16BE);
      assertEquals(old.length, now.length);
      for (int i = 0; i + old.length < font.length; i++) {
        if (java.util.Arrays.equals(font, i, i + old.length, old, 0, old.length)) {
          System.arraycopy(now, 0, font, i, now.length);
        }
      }
      ByteBuffer bytes = ByteBuffer.wrap(font);
      for (int t = 0; t < bytes.getShort(4); t++) {
        if (bytes.getInt(12 + 16 * t) == 0x68656164) { // head
          bytes.putShort(bytes.getInt(12 + 16 * t + 8) + 18, (short) unitsPerEm);
        }
      }
      return font;
    }
  }

  private static Typefaces given(byte[] font) throws Exception {
    return Typefaces.of(List.of(PictureSource.of("own.ttf", font)));
  }

  @Test
  void whatIsNotGivenIsSetInTheShippedOneAndSaid() throws Exception {
    Drawing drawing = drawn("Nowhere Grotesk", Typefaces.SHIPPED);
    assertInk(drawing, 1);
    assertEquals(
        List.of(
            PictureNote.changed(
                "its lettering is set in Liberation Sans, since Nowhere Grotesk is not given")),
        drawing.notes());
  }

  /** DejaVu Sans is on many machines, where it would be wider. */
  @Test
  void noFontOfTheMachineIsUsed() throws Exception {
    for (String family : List.of("DejaVu Sans", "monospace", "Dialog", "")) {
      assertInk(drawn(family, Typefaces.SHIPPED), 1);
    }
    assertEquals(
        List.of(PictureNote.plain("its lettering is set in Liberation Sans")),
        drawn("", Typefaces.SHIPPED).notes());
  }

  @Test
  void aGivenTypefaceIsFoundByItsName() throws Exception {
    Typefaces own = given(renamed("Sluice Trade GX", 2 * EM));
    assertEquals(List.of("Sluice Trade GX"), own.families());
    Drawing drawing = drawn("sluice trade gx, sans-serif", own);
    assertInk(drawing, 0.5);
    assertEquals(List.of(), drawing.notes());
    assertInk(drawn("Another", own), 1);
  }

  /** Liberation Sans has Latin, Greek and Cyrillic, but no Chinese; Arabic letters join. */
  @Test
  void whatWouldComeOutWrongIsRefused() throws Exception {
    for (String[] text :
        new String[][] {
          {"H\u6f22", "no typeface that is given has the sign '\u6f22' (U+6F22)"},
          {"H\u0633", "of a script that needs shaping (arabic)"},
          {"\u0905", "(devanagari)"}
        }) {
      PictureException e = assertThrows(PictureException.class, () -> reads(text[0]));
      String said = String.valueOf(e.getMessage());
      assertTrue(said.startsWith("h.svg: ") && said.contains(text[1]), said);
    }
    reads("H\u00e4\u03a9\u0416 \u00a0\u200b\n1");
  }

  private static void reads(String text) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'><text y='50'>"
            + text
            + "</text></svg>";
    PictureSource source = PictureSource.of("h.svg", svg.getBytes(StandardCharsets.UTF_8));
    PictureReader.read(source, ReadLimits.DEFAULT);
  }

  /** The headers are sound, the outlines are not: the typeface is at fault, not the drawing. */
  @Test
  void aDamagedTypefaceIsNamed() throws Exception {
    byte[] font = renamed("Sluice Trade GX", EM);
    ByteBuffer bytes = ByteBuffer.wrap(font);
    for (int t = 0; t < bytes.getShort(4); t++) {
      if (bytes.getInt(12 + 16 * t) == 0x676C7966) { // glyf
        int from = bytes.getInt(12 + 16 * t + 8);
        java.util.Arrays.fill(font, from, from + bytes.getInt(12 + 16 * t + 12), (byte) 0xFF);
      }
    }
    Typefaces own = given(font);
    PictureException e = assertThrows(PictureException.class, () -> drawn("Sluice Trade GX", own));
    String said = String.valueOf(e.getMessage());
    assertTrue(said.startsWith("h.svg: its text cannot be set in Sluice Trade GX"), said);
  }

  @Test
  void whatIsNoTypefaceIsRefused() {
    PictureSource file = PictureSource.of("own.ttf", "no font".getBytes(StandardCharsets.US_ASCII));
    PictureException e = assertThrows(PictureException.class, () -> Typefaces.of(List.of(file)));
    String said = String.valueOf(e.getMessage());
    assertTrue(said.startsWith("own.ttf: is no typeface"), said);
  }
}
