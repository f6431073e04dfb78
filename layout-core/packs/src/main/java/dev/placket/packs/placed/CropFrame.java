package dev.placket.packs.placed;

import dev.placket.layout.flat.Role;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Hairlines around details whose lines are cut off, where they stand close together: the cut lines
 * of one would else seem to run on in its neighbour.
 *
 * <p>A detail with callouts or dimension lines has none: its labels stand where the frame would.
 */
public final class CropFrame {
  /** Flats farther apart than this do not seem to touch (common practice). */
  static final Length CLOSE = Length.mm(8);

  /** From the drawing to its frame. */
  static final Length AIR = Length.mm(1);

  /** From a frame to any other flat, caption, cell or rule. */
  private static final Length CLEAR = Length.mm(0.5);

  private CropFrame() {}

  /** The lines of the frame of each flat that has one, by its id. */
  public static Map<String, List<Rule>> on(Sheet sheet, List<PlacedFlat> flats) {
    List<PlacedFlat> details = flats.stream().filter(CropFrame::mayBeFramed).toList();
    if (!anyClose(details)) {
      return Map.of();
    }
    List<PlacedFlat> crops = details.stream().filter(CutEnds::areIn).toList();
    if (crops.stream().noneMatch(crop -> hasNeighbour(crop, details))) {
      return Map.of();
    }
    Map<String, List<Rule>> frames = new TreeMap<>();
    for (PlacedFlat crop : crops) {
      Rect frame = crop.drawn().grown(AIR.pt());
      if (isClear(frame, crop, flats, sheet)) {
        frames.put(crop.flat().id(), SwatchFrame.lines(frame));
      }
    }
    return frames;
  }

  private static boolean mayBeFramed(PlacedFlat flat) {
    return flat.flat().role() == Role.DETAIL
        && flat.callouts().isEmpty()
        && flat.dimensions().isEmpty();
  }

  private static boolean anyClose(List<PlacedFlat> details) {
    return details.stream().anyMatch(d -> hasNeighbour(d, details));
  }

  private static boolean hasNeighbour(PlacedFlat flat, List<PlacedFlat> details) {
    Rect its = flat.drawn();
    return details.stream().anyMatch(d -> d != flat && d.drawn().separation(its) < CLOSE.pt());
  }

  private static boolean isClear(Rect frame, PlacedFlat crop, List<PlacedFlat> flats, Sheet sheet) {
    Rect needed = frame.grown(SwatchFrame.LINE.pt() / 2 + CLEAR.pt());
    List<Rect> others = new ArrayList<>();
    sheet.labelledCells().stream().map(LabelledCell::box).forEach(others::add);
    sheet.rules().stream().map(Rule::ink).forEach(others::add);
    for (PlacedFlat flat : flats) {
      if (flat != crop) {
        // Beside its neighbour's frame, too.
        Rect box = flat.footprint().toBox();
        others.add(mayBeFramed(flat) ? box.grown(AIR.pt()) : box);
      }
    }
    return sheet.windows().stream().anyMatch(w -> sheet.box(w).contains(needed))
        && others.stream().noneMatch(needed::overlaps);
  }
}
