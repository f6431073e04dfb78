package dev.placket.packs.report;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.ConflictText;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.refusal.PackSetting;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Puts into words of the trade why there is no room, and what would help. */
public final class NoRoomText {
  private NoRoomText() {}

  /**
   * The lines for the reader; the first states that there is no room. Flats are called by their
   * ids.
   *
   * @param flats the flats with their files
   * @param units the unit of lengths
   */
  public static List<Fault> faults(
      FitRequest request, Conflict conflict, FlatSet flats, Units units) {
    List<Fault> faults = new ArrayList<>();
    faults.add(first(request, conflict, id -> id, units));
    faults.addAll(TooFewPixels.faults(request, conflict, flats, units));
    return faults;
  }

  /**
   * The same for a folder, in which neither rules nor cells can be changed.
   *
   * @param flats the flats with their files
   * @param largerPaper paper on which they have room; null where none was found
   * @param units the unit of lengths
   */
  public static List<Fault> ofFolder(
      FitRequest request,
      Conflict conflict,
      FlatSet flats,
      @Nullable PaperSize largerPaper,
      Units units) {
    List<Fault> faults = new ArrayList<>();
    Conflict said = conflict.only(Relief.Kind.LEAVE_OUT);
    faults.add(first(request, said, id -> flats.captions().getOrDefault(id, id), units));
    faults.addAll(TooFewPixels.faults(request, conflict, flats, units));
    if (largerPaper != null) {
      Remedy.Way way = new Remedy.Way("place them there", PackSetting.PAPER, quoted(largerPaper));
      faults.add(Fault.noRoom("they fit on larger paper").with(Remedy.NONE.or(way)));
    }
    return faults;
  }

  private static Fault first(
      FitRequest request, Conflict conflict, UnaryOperator<String> names, Units units) {
    return Fault.noRoom(
        "no room on "
            + request.sheet().paper().name()
            + ". "
            + ConflictText.of(conflict, names, units::enough));
  }

  private static String quoted(PaperSize paper) {
    boolean upright = paper.height().compareTo(paper.width()) > 0;
    return upright ? "\"" + paper.name() + " portrait\"" : paper.name();
  }
}
