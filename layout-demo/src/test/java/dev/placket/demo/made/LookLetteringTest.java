package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.demo.made.PageRead.Words;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The lettering of the demo pack: one type family, capitals of 1.8, 2.5, 3.5 and 5 mm (ISO 3098) by
 * the outlines of the embedded typeface, captions and values of the header on their lines.
 */
class LookLetteringTest {
  private static final String PAPERS = "dev.placket.demo.made.MadePack#papers";
  private static final List<Double> STEPS = List.of(1.8, 2.5, 3.5, 5.0);

  /** Millimetres: what a rounded size of type may be off its step. */
  private static final double OFF = 0.02;

  @ParameterizedTest
  @MethodSource(PAPERS)
  void oneFamilyInFourHeights(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    Set<String> families = new TreeSet<>();
    Map<String, Integer> heights = new TreeMap<>();
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      PageRead page = PageRead.of(made.pdf(), sheet);
      double capital = page.capitals().get(0);
      page.capitals().forEach(c -> assertEquals(capital, c, 0.002, "flat capitals are one height"));
      for (Words w : page.words()) {
        families.add(w.font().replaceAll("[-,].*", ""));
        double height = w.em() * capital;
        boolean step = STEPS.stream().anyMatch(s -> Math.abs(s - height) <= OFF);
        assertTrue(step, "'" + w.text() + "' with capitals of " + height + " mm");
        heights.merge(String.format(Locale.ROOT, "%.2f", height), 1, Integer::sum);
      }
    }
    System.out.println(paper + ", row 3: " + families + ", capitals in mm with runs " + heights);
    assertEquals(1, families.size());
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void captionsAndValuesOfTheHeaderStandInLine(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      PageRead page = PageRead.of(made.pdf(), sheet);
      double capital = page.capitals().get(0);
      Map<Double, List<Double>> captions = new TreeMap<>();
      Map<Double, List<Double>> values = new TreeMap<>();
      for (JsonNode cell : made.sheets().get(sheet).path("labelledCells")) {
        String name = cell.path("name").asText();
        if (!name.startsWith("header ") || name.matches("header (label|kind)")) {
          continue;
        }
        Rectangle2D box = Figures.stated(cell);
        List<Words> in = in(page, box);
        Words caption = in.get(0);
        double row = Math.rint(box.getMinY());
        captions.computeIfAbsent(row, r -> new ArrayList<>()).add(caption.baseline());
        assertEquals(1.8, caption.em() * capital, OFF, name + ": caption");
        assertEquals(1.5, caption.left() - box.getMinX(), 0.1, name + ": inset of its caption");
        double air = caption.baseline() - 1.8 - box.getMinY();
        assertEquals(1.5, air, 0.1, name + ": inset above its caption");
        if (in.size() > 1) {
          Words value = in.get(1);
          values.computeIfAbsent(row, r -> new ArrayList<>()).add(value.baseline());
          assertEquals(2.5, value.em() * capital, OFF, name + ": value");
          assertEquals(1.5, value.left() - box.getMinX(), 0.1, name + ": inset of its value");
        } else {
          assertEquals("header factory", name, "the one cell that is left to be filled in");
        }
      }
      captions.values().forEach(b -> assertTrue(spread(b) <= 0.1, "baselines of captions " + b));
      values.values().forEach(b -> assertTrue(spread(b) <= 0.1, "baselines of values " + b));
      if (sheet == 0) {
        System.out.printf(
            Locale.ROOT,
            "%s, row 4: baselines of captions %s, of values %s mm, each within 0.1%n",
            paper,
            rounded(captions),
            rounded(values));
      }
    }
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void textStandsOutByAtLeastSevenToOne(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    double least = Double.POSITIVE_INFINITY;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      PageRead page = PageRead.of(made.pdf(), sheet);
      double darkest = page.tints().stream().mapToDouble(PageRead.Tint::grey).min().orElse(1);
      for (Words w : page.words()) {
        // WCAG 2, 1.4.6: (lighter + 0.05) / (darker + 0.05) of relative luminances.
        least = Math.min(least, (luminance(darkest) + 0.05) / (luminance(w.grey()) + 0.05));
      }
    }
    System.out.printf(Locale.ROOT, "%s, row 12: text stands out by %.1f:1%n", paper, least);
    assertTrue(least >= 7);
  }

  /** Of a grey, by the transfer of sRGB (IEC 61966-2-1). */
  private static double luminance(double grey) {
    return grey <= 0.04045 ? grey / 12.92 : Math.pow((grey + 0.055) / 1.055, 2.4);
  }

  private static List<Words> in(PageRead page, Rectangle2D box) {
    return page.words().stream()
        .filter(w -> box.contains(w.left(), w.baseline()))
        .sorted((a, b) -> Double.compare(a.baseline(), b.baseline()))
        .toList();
  }

  private static double spread(List<Double> values) {
    double least = values.stream().mapToDouble(d -> d).min().orElse(0);
    double most = values.stream().mapToDouble(d -> d).max().orElse(0);
    return most - least;
  }

  private static List<String> rounded(Map<Double, List<Double>> rows) {
    return rows.values().stream().map(r -> String.format(Locale.ROOT, "%.2f", r.get(0))).toList();
  }
}
