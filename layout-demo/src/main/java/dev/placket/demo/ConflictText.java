package dev.placket.demo;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.fit.Requirement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says in words of the trade why nothing fits, and what would help. */
public final class ConflictText {
  private static final double MM_PER_POINT = 25.4 / 72;

  private ConflictText() {}

  /** Lines for the reader, the first says that there is no room. */
  public static List<String> lines(FitRequest request, Conflict conflict) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "no room: the flats cannot all be placed on "
            + request.sheet().paper().name()
            + " at sizes that can be read"
            + (conflict.proven() ? "." : "; the search found no way."));
    for (Requirement r : conflict.requirements()) {
      lines.add("  asked for: " + said(r));
    }
    for (Relief r : conflict.reliefs()) {
      lines.add("  would help: " + said(r));
    }
    if (conflict.reliefs().isEmpty()) {
      lines.add("  would help: fewer flats in the folder, or larger paper, as in --paper A3");
    }
    return lines;
  }

  private static String said(Requirement r) {
    String of = String.join(", ", r.of());
    return switch (r.kind()) {
      case LEAST_SIZE -> "the least printed size of " + of;
      case WINDOW -> "the window of " + of;
      case GAP -> "the gap between " + of;
      case CLEARANCE -> "clearance round " + of;
      case SCALE_GROUP -> "one scale for " + of;
      case FRONT_LARGEST -> "the front as the largest: " + of;
      case DETAILS_UNDER_VIEWS -> "details smaller than views: " + of;
      case FRONT_BEFORE_BACK -> "the front before the back: " + of;
      case HELD -> "the place held by " + of;
    };
  }

  private static String said(Relief r) {
    String amount =
        switch (r.unit()) {
          case POINT -> String.format(Locale.ROOT, "%.1f mm", r.amount() * MM_PER_POINT);
          case RATIO -> String.format(Locale.ROOT, "%.3f", r.amount());
          case FLAT -> "";
        };
    return switch (r.kind()) {
      case LOWER_LEAST_SIZE -> "let " + r.of() + " be " + amount + " smaller than its least size";
      case SHORTEN_CELL -> "shorten the cell " + r.of() + " by " + amount;
      case NARROW_MARGIN -> "narrow the margin " + r.of() + " by " + amount;
      case WIDEN_TRACK -> "widen " + r.of() + " by " + amount;
      case LOWER_GAP -> "lower the gap by " + amount;
      case LOWER_CLEARANCE -> "lower the clearance by " + amount;
      case CHANGE_RATIO -> "change the ratio of " + r.of() + " by " + amount;
      case LEAVE_OUT -> "leave out " + r.of();
    };
  }
}
