package dev.placket.packs.report;

import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Names the sheets on which outlines print unevenly. */
final class OutlineStep {
  /** From here on the widest outline of a sheet is said to differ from the narrowest. */
  private static final double UNEVEN = 1.6;

  private OutlineStep() {}

  /** One line where there are such sheets, else none. */
  static List<String> of(List<ReportContent.OfSheet> sheets, Units units) {
    List<String> uneven = new ArrayList<>();
    Length least = null;
    Length most = null;
    for (int i = 0; i < sheets.size(); i++) {
      List<Length> widths =
          sheets.get(i).rows().stream()
              .filter(r -> r.flat().flat().role() != Role.SWATCH)
              .map(r -> r.flat().outline())
              .filter(Objects::nonNull)
              .sorted()
              .toList();
      if (!widths.isEmpty() && widths.get(widths.size() - 1).pt() > UNEVEN * widths.get(0).pt()) {
        uneven.add("" + (i + 1));
        least = least == null || widths.get(0).compareTo(least) < 0 ? widths.get(0) : least;
        Length last = widths.get(widths.size() - 1);
        most = most == null || last.compareTo(most) > 0 ? last : most;
      }
    }
    if (least == null || most == null) {
      return List.of();
    }
    String where =
        sheets.size() == 1
            ? ""
            : " on sheet" + (uneven.size() == 1 ? " " : "s ") + Figures.some(uneven);
    return List.of(
        "Outlines"
            + where
            + " print from "
            + units.fine(least)
            + " to "
            + units.fine(most)
            + " wide: 'line-weight' in a description prints them alike.");
  }
}
