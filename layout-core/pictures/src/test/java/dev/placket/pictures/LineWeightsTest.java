package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.image.BufferedImage;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Lines that are multiplied, against drawings whose widths are rewritten by hand. */
class LineWeightsTest {
  private static final Pattern WIDTHS =
      Pattern.compile("(stroke-(?:width|dasharray|dashoffset)=[\"'])([0-9., ]+)([\"'])");

  private static Drawing read(String svg) throws Exception {
    PictureSource source = PictureSource.of("d.svg", svg.getBytes(StandardCharsets.UTF_8));
    return (Drawing) PictureReader.read(source, ReadLimits.DEFAULT);
  }

  private static String doubled(String svg) {
    Matcher m = WIDTHS.matcher(svg);
    StringBuilder all = new StringBuilder();
    while (m.find()) {
      StringBuilder numbers = new StringBuilder();
      for (String number : m.group(2).strip().split("[, ]+")) {
        numbers.append(new BigDecimal(number).multiply(BigDecimal.valueOf(2))).append(' ');
      }
      m.appendReplacement(all, m.group(1) + numbers.toString().strip() + m.group(3));
    }
    return m.appendTail(all).toString();
  }

  private static void assertSame(Drawing one, Drawing other, String name) {
    InkedBox part = one.groundedBox();
    BufferedImage a = one.render(600, part);
    BufferedImage b = other.render(600, part);
    int differ = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        differ += a.getRGB(x, y) == b.getRGB(x, y) ? 0 : 1;
      }
    }
    assertEquals(0, differ, name + ": pixels that differ");
  }

  private static final String MIXED =
      """
      <svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 200'>
        <defs><pattern id='hatch' width='8' height='8' patternUnits='userSpaceOnUse'>
          <path d='M 0 8 L 8 0' stroke='#000'/></pattern></defs>
        <rect x='20' y='20' width='160' height='160' fill='#ccd' stroke='#000' stroke-width='4'/>
        <rect x='30' y='30' width='60' height='60' fill='url(#hatch)'/>
        <g transform='translate(100 100) scale(0.5)'>
          <path d='M 0 0 C 40 60 80 -60 120 0' fill='none' stroke='#000' stroke-width='3'
            stroke-dasharray='9 6'/></g>
        <text x='40' y='160' font-size='20'>CB 12</text>
      </svg>
      """;

  /** Fills, hatches and lettering are as they were; every stroke is as in the rewritten file. */
  @Test
  void strokesAloneAreMultiplied() throws Exception {
    assertSame(read(MIXED).weighted(2, 0), read(doubled(MIXED)), "mixed");
    assertSame(read(MIXED).weighted(1, 0), read(MIXED), "as drawn");
    // Painted again without a factor, it is as it was.
    Drawing drawing = read(MIXED);
    drawing.weighted(3, 0).render(300, drawing.inkedBox());
    assertSame(drawing, read(MIXED), "afterwards");
  }

  /** The ten garments, front and back. */
  @Test
  void garmentsAreAsIfDrawnSo() throws Exception {
    List<Path> all;
    try (Stream<Path> files = Files.list(Flats.folder())) {
      all = files.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
    }
    assertEquals(20, all.size());
    for (Path file : all) {
      String svg = Files.readString(file);
      assertSame(read(svg).weighted(2, 0), read(doubled(svg)), file.getFileName().toString());
    }
  }

  /** 480 units 4 wide, 120 units 2 wide, 20 units 9 wide: of 620, 15 % are 93. */
  @Test
  void theOutlineIsTheWidestOfEnoughLength() throws Exception {
    String svg =
        """
        <svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 200' fill='none' stroke='#000'>
          <rect x='20' y='20' width='120' height='120' stroke-width='4'/>
          <path d='M 20 80 h 120' stroke-width='2' stroke-linecap='square'/>
          <path d='M 80 60 v 20' stroke-width='9' stroke-linejoin='round'/>
        </svg>
        """;
    OutlineLines lines = Objects.requireNonNull(read(svg).lines());
    assertEquals(4, lines.width(), 1e-6);
    // The rectangle is joined by mitres, up to four halves of its width; half of 9 is less.
    assertEquals(8, lines.reach(), 1e-6);
    assertEquals(new InkedBox(20, 20, 140, 140), lines.geometry());
    // Where the seam is 1 % longer than three times the rest, it is the outline.
    String seam = svg.replace("v 20", "v 90").replace("M 80 60", "M 80 30");
    assertEquals(4, Objects.requireNonNull(read(seam).lines()).width(), 1e-6);
    String wide = svg.replace("v 20", "v 110").replace("M 80 60", "M 80 25");
    assertEquals(9, Objects.requireNonNull(read(wide).lines()).width(), 1e-6);
  }

  @Test
  void gapsBetweenDashesStayOpen() throws Exception {
    Drawing half = read(MIXED).weighted(0.5, 2.5);
    // 6 in a group at half size: 3, and 1.5 at half the width; 2.5 were asked for.
    assertEquals(2.5, Objects.requireNonNull(half.fineDetail().gap()), 1e-6);
    assertEquals(0.5 * 1.5, Objects.requireNonNull(half.fineDetail().line()), 1e-6);
  }

  @Test
  void aDrawingOfFillsHasNone() throws Exception {
    assertNull(
        read("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><rect width='5' height='5'/>"
                + "</svg>")
            .lines());
    assertTrue(Objects.requireNonNull(read(MIXED).lines()).width() > 0);
  }
}
