package dev.placket.pictures.typeface;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which face is set for which weight and style (CSS Fonts 4, 5.2), and the note for others. */
class FacesTest {
  /** The rules of 5.2 for font-weight, applied by hand. */
  @ParameterizedTest
  @CsvSource({
    "400, 300 400 700, 400",
    "400, 300 500 700, 500",
    "400, 300 600 700, 300",
    "500, 400 600, 400",
    "450, 400 500, 500",
    "300, 100 400, 100",
    "300, 400 700, 400",
    "700, 400 600 900, 900",
    "700, 400 600, 600",
    "900, 100 200, 200",
  })
  void theNearestWeightOnTheRightSide(int asked, String given, int set) {
    List<GivenTypeface> family =
        Arrays.stream(given.split(" "))
            .map(w -> new GivenTypeface("Any", Integer.parseInt(w), false, new byte[0]))
            .toList();
    assertEquals(set, requireNonNull(FaceMatching.find(family, asked, false)).weight());
  }

  @Test
  void styleComesBeforeWeight() {
    GivenTypeface bold = new GivenTypeface("Any", 700, false, new byte[0]);
    GivenTypeface italic = new GivenTypeface("Any", 400, true, new byte[0]);
    List<GivenTypeface> both = List.of(bold, italic);
    assertEquals(italic, FaceMatching.find(both, 700, true));
    assertEquals(bold, FaceMatching.find(both, 400, false));
    assertEquals(bold, FaceMatching.find(List.of(bold), 400, true));
  }

  /** The shipped face as another weight or style, its letters half as large. */
  private static PictureSource face(int weight, boolean italic) throws Exception {
    try (InputStream in = Typefaces.class.getResourceAsStream("LiberationSans-Regular.ttf")) {
      ByteBuffer font = ByteBuffer.wrap(requireNonNull(in).readAllBytes());
      for (int t = 0; t < font.getShort(4); t++) {
        int at = font.getInt(12 + 16 * t + 8);
        String table = new String(font.array(), 12 + 16 * t, 4, StandardCharsets.US_ASCII);
        if (table.equals("OS/2")) { // OpenType: usWeightClass at 4, fsSelection at 62
          font.putShort(at + 4, (short) weight);
          font.putShort(at + 62, (short) (italic ? 1 : 0x40));
        } else if (table.equals("head")) {
          font.putShort(at + 18, (short) 4096);
        }
      }
      return PictureSource.of("face.ttf", font.array());
    }
  }

  private static Drawing drawn(String style, PictureSource... faces) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 2048 2048'><text y='2000'"
            + " font-size='2048' style='"
            + style
            + "'><tspan>H</tspan></text></svg>";
    return (Drawing)
        PictureReader.read(
            PictureSource.of("h.svg", svg.getBytes(StandardCharsets.UTF_8)),
            ReadLimits.DEFAULT,
            Typefaces.of(List.of(faces)));
  }

  /** The H of Liberation Sans is 1409 units high; the given faces are half of it. */
  @Test
  void aGivenBoldOrItalicFaceIsSet() throws Exception {
    String family = "font-family:Liberation Sans;";
    for (String bold : List.of("font-weight:bold", "font-weight:700", "font-weight:900")) {
      Drawing d = drawn(family + bold, face(700, false));
      assertEquals(1409 / 2.0, d.inkedBox().height(), 1);
      assertTrue(d.notes().isEmpty(), () -> bold + d.notes());
    }
    Drawing regular = drawn(family, face(700, false));
    assertEquals(1409, regular.inkedBox().height(), 1);
    Drawing italic = drawn(family + "font-style:italic", face(400, true));
    assertEquals(1409 / 2.0, italic.inkedBox().height(), 1);
    assertTrue(italic.notes().isEmpty(), () -> "" + italic.notes());
  }

  @ParameterizedTest
  @CsvSource({
    "font-weight:bold, in bold",
    "font-style:italic, in italic",
    "font-style:oblique;font-weight:600, in bold italic",
  })
  void aFaceThatIsNotGivenIsNamed(String style, String said) throws Exception {
    Drawing d = drawn(style);
    assertEquals(1409, d.inkedBox().height(), 1);
    assertTrue(
        d.notes().stream().anyMatch(n -> n.changesPicture() && n.text().contains(said)),
        () -> "" + d.notes());
  }
}
