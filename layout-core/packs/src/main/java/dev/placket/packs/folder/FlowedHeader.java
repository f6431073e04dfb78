package dev.placket.packs.folder;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Breaks;
import dev.placket.packs.text.CellText;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The header on a sheet too narrow for two rows: its values run on from row to row, and rows are as
 * high as their text asks for. Where all of it would take more than a quarter of the sheet, what
 * has no value steps aside; where that does not do, the rest is set small.
 */
final class FlowedHeader {
  private static final double MOST = 0.25;

  private static final double INSETS = 2 * TextBlock.INSET.pt();

  /** Set small, values need less than their usual width. */
  private static final double NARROWER = 0.6;

  private final Rect inside;
  private final PackNotes notes;
  private final Lettering lettering;
  private final boolean small;

  FlowedHeader(Rect inside, PackNotes notes, Lettering lettering) {
    this(inside, notes, lettering, false);
  }

  private FlowedHeader(Rect inside, PackNotes notes, Lettering lettering, boolean small) {
    this.inside = inside;
    this.notes = notes;
    this.lettering = lettering;
    this.small = small;
  }

  HeaderLayout lay() {
    List<HeaderSpot> filled = HeaderSpot.ALL.stream().filter(s -> !s.mayGo(notes)).toList();
    HeaderLayout all = lay(HeaderSpot.ALL);
    HeaderLayout usual = fits(all) ? all : lay(filled);
    if (fits(usual)) {
      return usual;
    }
    HeaderLayout least = new FlowedHeader(inside, notes, lettering, true).lay(filled);
    return least.bottom() < usual.bottom() ? least : usual;
  }

  private boolean fits(HeaderLayout header) {
    return header.bottom() - inside.top() <= MOST * inside.height();
  }

  private HeaderLayout lay(List<HeaderSpot> spots) {
    Map<HeaderSpot, Rect> boxes = new LinkedHashMap<>();
    double top = inside.top();
    for (List<HeaderSpot> row : rows(spots)) {
      List<Double> edges = edges(row);
      double bottom = top + height(row, edges);
      for (int i = 0; i < row.size(); i++) {
        boxes.put(row.get(i), new Rect(edges.get(i), top, edges.get(i + 1), bottom));
      }
      top = bottom;
    }
    return new HeaderLayout(List.of(inside.left(), inside.right()), boxes, top);
  }

  /** On as few rows as hold them, and those as evenly filled as may be. */
  private List<List<HeaderSpot>> rows(List<HeaderSpot> spots) {
    List<List<HeaderSpot>> fewest = rows(spots, inside.width());
    List<List<HeaderSpot>> even = fewest;
    for (double room = inside.width(); ; room -= Length.mm(2).pt()) {
      List<List<HeaderSpot>> rows = rows(spots, room);
      if (rows.size() > fewest.size() || room <= 0) {
        return even;
      }
      even = rows;
    }
  }

  private List<List<HeaderSpot>> rows(List<HeaderSpot> spots, double room) {
    List<List<HeaderSpot>> rows = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (HeaderSpot spot : spots) {
      double its = wanted(spot);
      if (used + its > room) {
        rows.add(new ArrayList<>());
        used = 0;
      }
      rows.get(rows.size() - 1).add(spot);
      used += its;
    }
    return rows;
  }

  /** Its usual width, or what its caption or its longest word asks for. */
  private double wanted(HeaderSpot spot) {
    double widest = CellText.captionWidth(spot.caption(notes), lettering);
    for (String word : Breaks.words(value(spot))) {
      widest = Math.max(widest, CellText.captionWidth(word.strip(), lettering));
    }
    return Math.min(inside.width(), Math.max(usual(spot).pt(), widest + INSETS + 0.01));
  }

  private Length usual(HeaderSpot spot) {
    return Length.mm(spot.usual()).times(small ? NARROWER : 1);
  }

  private List<Length> steps(HeaderSpot spot) {
    return small ? List.of(Lettering.CAPTION) : spot.steps();
  }

  private String value(HeaderSpot spot) {
    return spot.value(notes, HeaderSpot.widest(notes));
  }

  private List<Double> edges(List<HeaderSpot> row) {
    double all = row.stream().mapToDouble(this::wanted).sum();
    double spare = Math.max(0, inside.width() - all);
    double likes = row.stream().mapToDouble(HeaderSpot::usual).sum();
    List<Double> edges = new ArrayList<>(List.of(inside.left()));
    double at = inside.left();
    for (HeaderSpot spot : row) {
      at += wanted(spot) + spare * spot.usual() / likes;
      edges.add(at);
    }
    return FlatSheet.exactEnd(edges, inside.right());
  }

  private double height(List<HeaderSpot> row, List<Double> edges) {
    double height = small ? 0 : WideHeader.ROW.pt();
    for (int i = 0; i < row.size(); i++) {
      double room = edges.get(i + 1) - edges.get(i) - INSETS;
      height =
          Math.max(
              height,
              CellText.heightOf(
                  row.get(i).caption(notes),
                  value(row.get(i)),
                  room,
                  steps(row.get(i)),
                  lettering));
    }
    return height;
  }
}
