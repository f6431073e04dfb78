package dev.placket.workbooks.place;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatBoxes;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.LineWeight;
import dev.placket.packs.flats.SheetSpacing;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.NoRoomText;
import dev.placket.packs.report.Units;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.PrintPage;
import dev.placket.workbooks.read.Workbook;
import dev.placket.workbooks.read.Worksheet;
import dev.placket.workbooks.refusal.WorkbookSetting;
import dev.placket.workbooks.room.FindRoom;
import dev.placket.workbooks.room.PageRoom;
import dev.placket.workbooks.room.Wanted;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Places flats on the printed page of a worksheet where they come out largest. */
public final class WorksheetFit {
  /** Pages beyond these are not tried: a worksheet of flats has one. */
  private static final int MOST_PAGES = 6;

  private final Worksheet worksheet;
  private final int tolerance;
  private final DensityTargets targets;
  private final Units units;

  /**
   * For one worksheet.
   *
   * @param tolerance by how many pixels programs may differ in the size of a column or row
   * @param units the unit of lengths in messages
   */
  public WorksheetFit(Worksheet worksheet, int tolerance, DensityTargets targets, Units units) {
    this.worksheet = worksheet;
    this.tolerance = tolerance;
    this.targets = targets;
    this.units = units;
  }

  /**
   * The fit, with pictures.
   *
   * @param asked ranges that the caller named
   * @throws Refusal if nothing fits, or a range does not exist
   */
  public Fitted fit(FlatSet set, Workbook workbook, Asked asked) throws Refusal {
    Map<String, CellRange> windows = asked.windows(workbook, worksheet);
    List<String> boxes = List.copyOf(windows.keySet());
    List<Flat> plain = flats(set, 0);
    Pages pages = new Pages(worksheet, tolerance, windows.values());
    FindRoom rooms =
        new FindRoom(
            worksheet,
            tolerance,
            Anchored.OWN,
            new Wanted(
                windows,
                FlatBoxes.in(plain, boxes).stream().anyMatch(f -> !f.windows().isEmpty())
                    && set.flats().stream().allMatch(f -> f.windows().isEmpty()),
                asked.labelled(workbook, worksheet),
                least(plain, true),
                least(plain, false)));
    List<Fault> why = new ArrayList<>();
    Fitted best = largest(set, boxes, rooms, pages.printed(), why);
    if (best == null) {
      best = largest(set, boxes, rooms, pages.beyond(), why);
    }
    if (best != null) {
      return best;
    }
    Fault outside = outside(windows, pages.areas());
    if (outside != null) {
      throw new Refusal(Refusal.Kind.NO_ROOM, List.of(outside));
    }
    throw new Refusal(Refusal.Kind.NO_ROOM, why.isEmpty() ? List.of(nothingBlank(plain)) : why);
  }

  /** What to say where no window lies on anything that is printed; else null. */
  private @Nullable Fault outside(Map<String, CellRange> windows, List<CellRange> printed) {
    boolean meet = windows.values().stream().anyMatch(w -> printed.stream().anyMatch(w::meets));
    return meet || windows.isEmpty()
        ? null
        : noRoom(
                "no room: "
                    + words(windows.values())
                    + " is not printed, only "
                    + words(printed)
                    + " is")
            .remedy("extend the print area")
            .remedy("name a range within it", WorkbookSetting.WINDOW);
  }

  private static String words(Collection<CellRange> ranges) {
    return ranges.stream().map(CellRange::toString).collect(Collectors.joining(", "));
  }

  private @Nullable Fitted largest(
      FlatSet set, List<String> boxes, FindRoom rooms, List<PrintPage> pages, List<Fault> why)
      throws Refusal {
    List<PageRoom> candidates = new ArrayList<>();
    for (int i = 0; i < pages.size() && candidates.size() < MOST_PAGES; i++) {
      PageRoom room = rooms.of(pages.get(i));
      if (room != null) {
        candidates.add(room);
      }
    }
    PageRoom bestRoom = null;
    FitRequest bestRequest = null;
    Fit best = null;
    for (PageRoom room : candidates) {
      List<Flat> flats = in(room, FlatBoxes.in(flats(set, room.page().percent()), boxes));
      Fault lacking = lacking(room, flats);
      if (lacking != null) {
        why.add(lacking);
        continue;
      }
      FitRequest request = FitRequest.of(room.sheet(), flats, SheetSpacing.DEFAULT);
      Outcome outcome = Planner.plan(request);
      if (outcome instanceof Conflict conflict) {
        if (why.isEmpty()) {
          why.addAll(conflict(room, request, conflict, set));
        }
      } else if (best == null
          || ((Fit) outcome).proof().scale().compareTo(best.proof().scale()) > 0) {
        best = (Fit) outcome;
        bestRoom = room;
        bestRequest = request;
      }
    }
    return best == null || bestRoom == null || bestRequest == null
        ? null
        : prepared(set, bestRoom, bestRequest, best);
  }

  private Fitted prepared(FlatSet set, PageRoom room, FitRequest request, Fit fit) throws Refusal {
    List<Anchored> pictures = new Prepare(room, targets).all(set, request.flats(), fit);
    return new Fitted(worksheet, room, request, fit, pictures);
  }

  /** A window that a flat names may have come out as several. */
  private static List<Flat> in(PageRoom room, List<Flat> flats) {
    List<String> all = room.sheet().windows().stream().map(SheetWindow::name).toList();
    return flats.stream().map(f -> f.withWindows(own(f.windows(), all))).toList();
  }

  private static List<String> own(List<String> named, List<String> all) {
    List<String> own =
        all.stream().filter(w -> named.stream().anyMatch(n -> w.startsWith(n + " "))).toList();
    return named.isEmpty() || !own.isEmpty() ? own : named;
  }

  /** What to say where a page has nothing blank of a window that a flat names; else null. */
  private @Nullable Fault lacking(PageRoom room, List<Flat> flats) {
    List<String> all = room.sheet().windows().stream().map(SheetWindow::name).toList();
    for (Flat flat : flats) {
      if (!all.containsAll(flat.windows())) {
        return noRoom(
                "nothing is blank in the window "
                    + String.join(" or ", flat.windows())
                    + " of the flat "
                    + flat.id()
                    + " on page "
                    + room.page().cells())
            .remedy("clear it")
            .remedy("name another");
      }
    }
    return null;
  }

  /** Flats without captions, since a worksheet has labels of its own. */
  private List<Flat> flats(FlatSet set, int percent) {
    double guard = percent == 0 ? 0 : Prepare.guard(new PrintedScale(percent), targets);
    Surround rest =
        new Surround(Length.ZERO, Length.ZERO, Length.pt(guard), Length.pt(guard), Length.ZERO);
    return set.items().stream().map(i -> i.flat().withSurround(around(i, rest))).toList();
  }

  private static Surround around(FlatSet.Item item, Surround rest) {
    LineWeight weight = item.weight();
    return weight == null ? rest : weight.around(rest);
  }

  /** The least width or height that any flat takes at its least size, in points. */
  private static double least(List<Flat> flats, boolean width) {
    return flats.stream()
        .mapToDouble(
            f -> {
              Limits limits = f.limits();
              double side = width ? f.ink().width() : f.ink().height();
              return limits.least().pt() * side / f.ink().longestSide();
            })
        .min()
        .orElse(0);
  }

  private List<Fault> conflict(PageRoom room, FitRequest request, Conflict conflict, FlatSet set) {
    List<Fault> faults = new ArrayList<>(NoRoomText.faults(request, conflict, set, units));
    faults.set(0, faults.get(0).at(Place.worksheet(worksheet.name())));
    CellRange largest = room.blank().get(0);
    faults.add(
        noRoom("its largest blank window is " + largest + ", " + printed(room, largest))
            .remedy("clear cells round it")
            .remedy("widen its columns and rows")
            .remedy("print the worksheet larger than " + room.page().percent() + " %"));
    return faults;
  }

  private Fault nothingBlank(List<Flat> flats) {
    return noRoom(
            "no room: no blank window of its printed pages is large enough for any of the flats,"
                + " which need at least "
                + onPaper(least(flats, true), least(flats, false)))
        .remedy("clear or merge cells to leave one")
        .remedy("name a further worksheet", WorkbookSetting.WORKSHEET);
  }

  private Fault noRoom(String found) {
    return Fault.noRoom(found).at(Place.worksheet(worksheet.name()));
  }

  private String printed(PageRoom room, CellRange cells) {
    Grid grid = room.narrow();
    PrintedScale scale = new PrintedScale(room.page().percent());
    return onPaper(
        scale.printedPoints(grid.columns().between(cells.left(), cells.right())),
        scale.printedPoints(grid.rows().between(cells.top(), cells.bottom())));
  }

  private String onPaper(double width, double height) {
    return units.size(width, height) + " " + units.sign() + " on paper";
  }
}
