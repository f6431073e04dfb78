package dev.placket.packs.report;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.sheet.Paper;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatSet;
import dev.placket.pictures.Raster;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts into words of the trade why there is no room, and what would help. */
public final class NoRoomText {
  private NoRoomText() {}

  /** Lines for the reader, the first says that there is no room; flats are called by their ids. */
  public static List<String> lines(FitRequest request, Conflict conflict, Units units) {
    return List.of(
        "no room on "
            + request.sheet().paper().name()
            + ". "
            + dev.placket.layout.fit.ConflictText.of(conflict, id -> id, units::enough));
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
    lines.add(
        "no room on "
            + request.sheet().paper().name()
            + ". "
            + dev.placket.layout.fit.ConflictText.of(
                conflict.only(Relief.Kind.LEAVE_OUT),
                id -> flats.captions().getOrDefault(id, id),
                units::enough));
    if (largerPaper == null) {
      lines.addAll(pixels(flats, units));
    } else {
      lines.add("they fit on larger paper: --paper " + quoted(largerPaper));
    }
    return lines;
  }

  private static String quoted(Paper paper) {
    boolean upright = paper.height().compareTo(paper.width()) > 0;
    return upright ? "\"" + paper.name() + " portrait\"." : paper.name() + ".";
  }

  /** Pictures that their pixels hold small, and the way out of that. */
  private static List<String> pixels(FlatSet flats, Units units) {
    List<String> lines = new ArrayList<>();
    for (FlatSet.Item item : flats.items()) {
      Length most = item.flat().limits().greatest();
      if (most != null && item.file().picture() instanceof Raster raster) {
        lines.add(
            item.file().name()
                + ": its "
                + raster.width()
                + " × "
                + raster.height()
                + " pixels limit it to "
                + units.length(most)
                + " to stay crisp; export it with more pixels, or accept blur with"
                + " --allow-soft.");
      }
    }
    return lines;
  }
}
