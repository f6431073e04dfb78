package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.demo.made.PageRead.Words;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Captions of the demo pack: 2 mm under the ink, centred, those of a row on one baseline. */
class LookCaptionsTest {
  private static final String PAPERS = "dev.placket.demo.made.MadePack#papers";

  /** The height of a caption's capitals. */
  private static final double CAPITALS = 2.5;

  @ParameterizedTest
  @MethodSource(PAPERS)
  void captionsHangTwoMillimetresUnderTheInk(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      PageRead page = PageRead.of(made.pdf(), sheet);
      List<Rectangle2D> ink = Figures.ink(made, sheet);
      for (int i = 0; i < ink.size(); i++) {
        JsonNode placement = made.placements(sheet).get(i);
        if (placement.path("lines").isEmpty()) {
          // In a row of a table.
          continue;
        }
        Words caption = caption(page, placement, ink.get(i));
        double air = caption.baseline() - CAPITALS - ink.get(i).getMaxY();
        assertEquals(2, air, 0.1, caption.text());
        least = Math.min(least, air);
        most = Math.max(most, air);
        double middle = (caption.left() + caption.right()) / 2;
        assertEquals(ink.get(i).getCenterX(), middle, 0.1, caption.text());
      }
    }
    System.out.printf(
        Locale.ROOT, "%s, row 12: captions %.3f to %.3f mm under the ink%n", paper, least, most);
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void captionsOfARowStandOnOneBaseline(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    for (String id : List.of("details", "colourways")) {
      int sheet = made.sheet(id);
      PageRead page = PageRead.of(made.pdf(), sheet);
      List<Double> bases = new ArrayList<>();
      List<Rectangle2D> ink = Figures.ink(made, sheet);
      for (int i = 0; i < ink.size(); i++) {
        bases.add(caption(page, made.placements(sheet).get(i), ink.get(i)).baseline());
      }
      bases.sort(null);
      List<String> rows = new ArrayList<>();
      int from = 0;
      for (int i = 1; i <= bases.size(); i++) {
        // Baselines of two rows are a detail apart.
        if (i == bases.size() || bases.get(i) - bases.get(i - 1) > 10) {
          double spread = bases.get(i - 1) - bases.get(from);
          rows.add(String.format(Locale.ROOT, "%d within %.3f mm", i - from, spread));
          assertTrue(spread <= 0.1, id + ": baselines " + bases.subList(from, i));
          from = i;
        }
      }
      System.out.println(paper + ", row 12: " + id + ": captions in rows " + rows);
      assertTrue(rows.size() <= 2, "at most two rows");
    }
  }

  /** The first line of the caption: the nearest words that begin it under the ink. */
  private static Words caption(PageRead page, JsonNode placement, Rectangle2D ink) {
    String text = placement.path("caption").asText();
    return page.words().stream()
        .filter(w -> text.startsWith(w.text()) && w.baseline() > ink.getMaxY())
        .filter(w -> w.left() < ink.getMaxX() && w.right() > ink.getMinX())
        .min((a, b) -> Double.compare(a.baseline(), b.baseline()))
        .orElseThrow(() -> new AssertionError("no caption '" + text + "'"));
  }
}
