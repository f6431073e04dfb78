package dev.placket.packs.report;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.ConflictText;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.sheet.Paper;
import dev.placket.packs.flats.FlatSet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Puts into words of the trade why there is no room, and what would help. */
public final class NoRoomText {
  private NoRoomText() {}

  /**
   * Lines for the reader, the first says that there is no room; flats are called by their ids.
   *
   * @param flats the flats with their files
   * @param units the unit of lengths
   */
  public static List<String> lines(
      FitRequest request, Conflict conflict, FlatSet flats, Units units) {
    List<String> lines = new ArrayList<>();
    lines.add(first(request, conflict, id -> id, units));
    lines.addAll(TooFewPixels.lines(request, conflict, flats, units));
    return lines;
  }

  /**
   * The same lines for a folder, in which neither rules nor cells can be changed.
   *
   * @param flats the flats with their files
   * @param largerPaper paper on which they have room; null where none was found
   * @param units the unit of lengths
   */
  public static List<String> ofFolder(
      FitRequest request,
      Conflict conflict,
      FlatSet flats,
      @Nullable Paper largerPaper,
      Units units) {
    List<String> lines = new ArrayList<>();
    Conflict said = conflict.only(Relief.Kind.LEAVE_OUT);
    lines.add(first(request, said, id -> flats.captions().getOrDefault(id, id), units));
    lines.addAll(TooFewPixels.lines(request, conflict, flats, units));
    if (largerPaper != null) {
      lines.add("they fit on larger paper: --paper " + quoted(largerPaper));
    }
    return lines;
  }

  private static String first(
      FitRequest request, Conflict conflict, UnaryOperator<String> names, Units units) {
    return "no room on "
        + request.sheet().paper().name()
        + ". "
        + ConflictText.of(conflict, names, units::enough);
  }

  private static String quoted(Paper paper) {
    boolean upright = paper.height().compareTo(paper.width()) > 0;
    return upright ? "\"" + paper.name() + " portrait\"." : paper.name() + ".";
  }
}
