package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Rect;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackBand;
import dev.placket.packs.description.PackSheet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sheet's rectangles: header and foot as on every sheet of that paper, and its own grid between.
 *
 * @param paper its paper
 * @param margins its margins
 * @param inside what the margins leave
 * @param header the laid header, or null
 * @param foot the laid foot, or null
 * @param between what header and foot leave
 * @param body the sheet's own grid
 * @param lines all lines, so that shared edges are one number
 */
record SheetFrame(
    PaperSize paper,
    Margins margins,
    Rect inside,
    @Nullable LaidGrid header,
    @Nullable LaidGrid foot,
    Rect between,
    LaidGrid body,
    LaidGrid.Lines lines) {

  /**
   * The frame of a sheet; null where it cannot be laid, with the slips noted.
   *
   * @param tables gives the heights of its tables to rows that take theirs
   */
  static @Nullable SheetFrame of(
      String id, PackSheet sheet, Described described, SheetTables tables) {
    String path = "sheets/" + id;
    PaperSize paper = sheet.paper() == null ? described.pack().paper() : sheet.paper();
    Margins margins = sheet.margins() == null ? described.pack().margins() : sheet.margins();
    Rect inside = inside(paper, margins);
    double top = height(described.pack().header());
    double bottom = height(described.pack().foot());
    String of = sheet.margins() == null ? "margins" : path + "/margins";
    if (inside == null || inside.height() <= top + bottom) {
      described
          .faults()
          .add(
              described.places().of(of),
              "margins, header and foot that leave no room on " + paper.name(),
              "room between them");
      return null;
    }
    LaidGrid.Lines lines = new LaidGrid.Lines();
    lines.across().lines(List.of(inside.left(), inside.right()));
    double headEnd = lines.down().line(inside.top() + top);
    double footStart = lines.down().line(inside.bottom() - bottom);
    Rect between = new Rect(inside.left(), headEnd, inside.right(), footStart);
    Rect head = new Rect(inside.left(), inside.top(), inside.right(), headEnd);
    Rect foot = new Rect(inside.left(), footStart, inside.right(), inside.bottom());
    LaidGrid header = band(described.pack().header(), head, "header", lines, described);
    LaidGrid footer = band(described.pack().foot(), foot, "foot", lines, described);
    LaidGrid body =
        LaidGrid.of(
            AutoRows.of(id, sheet, between, tables, described), between, path, lines, described);
    boolean bands =
        (described.pack().header() == null) == (header == null)
            && (described.pack().foot() == null) == (footer == null);
    return body == null || !bands
        ? null
        : new SheetFrame(paper, margins, inside, header, footer, between, body, lines);
  }

  private static @Nullable Rect inside(PaperSize paper, Margins m) {
    double right = paper.width().pt() - m.right().pt();
    double bottom = paper.height().pt() - m.bottom().pt();
    return right <= m.left().pt() || bottom <= m.top().pt()
        ? null
        : new Rect(m.left().pt(), m.top().pt(), right, bottom);
  }

  private static @Nullable LaidGrid band(
      @Nullable PackBand band, Rect box, String path, LaidGrid.Lines lines, Described described) {
    return band == null ? null : LaidGrid.of(band.grid(), box, path, lines, described);
  }

  private static double height(@Nullable PackBand band) {
    return band == null
        ? 0
        : band.grid().rows().stream()
            .mapToDouble(r -> r instanceof GridTrack.Fixed f ? f.length().pt() : 0)
            .sum();
  }
}
