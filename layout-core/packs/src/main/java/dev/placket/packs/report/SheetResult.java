package dev.placket.packs.report;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.Sheet;
import dev.placket.packs.placed.PlacedFlat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of one sheet.
 *
 * @param id its identifier; null where the sheet has none
 * @param sheet the ruled page
 * @param spacing gap and clearance
 * @param request what was asked; null where the sheet has no flats
 * @param fit the answer; null where the sheet has no flats
 * @param flats its flats where they lie
 * @param further which of several sheets it is that one went on over; null where it is the only one
 * @param noRoom why its flats have no room; null where they have
 * @param more writes further fields of the sheet into {@code fit.json}
 */
public record SheetResult(
    @Nullable String id,
    Sheet sheet,
    Spacing spacing,
    @Nullable FitRequest request,
    @Nullable Fit fit,
    List<PlacedFlat> flats,
    @Nullable Further further,
    @Nullable NoRoom noRoom,
    MoreJson more) {
  /** Copies the list. */
  public SheetResult {
    flats = List.copyOf(flats);
  }

  /** A sheet without an identifier, with its flats placed. */
  public static SheetResult of(FitRequest request, Fit fit, List<PlacedFlat> flats) {
    return of(null, request, fit, flats, json -> {});
  }

  /** A sheet with its flats placed. */
  public static SheetResult of(
      @Nullable String id, FitRequest request, Fit fit, List<PlacedFlat> flats, MoreJson more) {
    return new SheetResult(
        id, request.sheet(), request.spacing(), request, fit, flats, null, null, more);
  }

  /** The same sheet as one of several. */
  public SheetResult of(@Nullable Further which) {
    return new SheetResult(id, sheet, spacing, request, fit, flats, which, noRoom, more);
  }

  /** The same with its flats as they were embedded. */
  public SheetResult with(List<PlacedFlat> embedded) {
    return new SheetResult(id, sheet, spacing, request, fit, embedded, further, noRoom, more);
  }

  /** A sheet without flats. */
  public static SheetResult bare(String id, Sheet sheet, Spacing spacing, MoreJson more) {
    return new SheetResult(id, sheet, spacing, null, null, List.of(), null, null, more);
  }

  /** A sheet that does not hold its flats. */
  public static SheetResult noRoom(@Nullable String id, FitRequest request, NoRoom why) {
    return new SheetResult(
        id, request.sheet(), request.spacing(), request, null, List.of(), null, why, json -> {});
  }
}
