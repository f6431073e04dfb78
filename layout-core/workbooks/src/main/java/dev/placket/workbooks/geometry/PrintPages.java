package dev.placket.workbooks.geometry;

import dev.placket.layout.sheet.PaperSize;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/**
 * Breaks a worksheet into printed pages, down first.
 *
 * <p>Readers disagree about sizes by a little, so each page is known by what it holds in any case:
 * it begins where it begins at the latest, and ends where it ends at the earliest.
 */
public final class PrintPages {
  private static final int LEAST_PERCENT = 10;
  private static final int WHOLE = 100;

  private final Grid grid;
  private final Grid narrow;
  private final Grid wide;
  private final PrintSetup setup;
  private final long roomAcross;
  private final long roomDown;

  /**
   * The pages of a worksheet.
   *
   * @param grid its columns and rows
   * @param tolerance by how many pixels programs may differ in the size of a column or row
   * @param setup how it goes on paper
   */
  public PrintPages(Grid grid, int tolerance, PrintSetup setup) {
    this.grid = grid;
    this.narrow = grid.changed(-tolerance);
    this.wide = grid.changed(tolerance);
    this.setup = setup;
    PaperSize paper = setup.paper();
    double across = paper.width().pt() - setup.margins().left().pt() - setup.margins().right().pt();
    double down = paper.height().pt() - setup.margins().top().pt() - setup.margins().bottom().pt();
    this.roomAcross = Math.max(1, Emu.ofPoints(across));
    this.roomDown = Math.max(1, Emu.ofPoints(down));
  }

  /**
   * The printed size in hundredths, whole as readers take it.
   *
   * @param areas what is printed; one or more
   */
  public int percent(List<CellRange> areas) {
    return percent(grid, areas);
  }

  /**
   * The pages of one printed area.
   *
   * @param area what is printed on them
   * @param areas all that the worksheet prints, since they share one printed size
   */
  public List<PrintPage> of(CellRange area, List<CellRange> areas) {
    int percent = percent(areas);
    PrintSetup.FitPages fit = setup.fit();
    boolean oneAcross = fit != null && fit.across() == 1;
    boolean oneDown = fit != null && fit.down() == 1;
    int large = percent(narrow, areas);
    int small = percent(wide, areas);
    List<int[]> across =
        oneAcross
            ? List.of(new int[] {area.left(), area.right()})
            : spans(
                new Axis(narrow.columns(), wide.columns(), setup.columnBreaks()),
                area.left(),
                area.right(),
                onSheet(roomAcross, large) - titles(wide.columns(), setup.titleColumns(), true),
                onSheet(roomAcross, small));
    List<int[]> down =
        oneDown
            ? List.of(new int[] {area.top(), area.bottom()})
            : spans(
                new Axis(narrow.rows(), wide.rows(), setup.rowBreaks()),
                area.top(),
                area.bottom(),
                onSheet(roomDown, large) - titles(wide.rows(), setup.titleRows(), false),
                onSheet(roomDown, small));
    return pages(across, down, percent);
  }

  /** All columns and rows that one page holds from the corner of an area on, in any case. */
  public CellRange firstWholePage(CellRange area, List<CellRange> areas) {
    CellRange all = new CellRange(area.left(), area.top(), Grid.COLUMNS, Grid.ROWS);
    int percent = percent(narrow, areas);
    List<int[]> across =
        spans(
            new Axis(narrow.columns(), wide.columns(), setup.columnBreaks()),
            all.left(),
            all.right(),
            onSheet(roomAcross, percent),
            onSheet(roomAcross, percent));
    List<int[]> down =
        spans(
            new Axis(narrow.rows(), wide.rows(), setup.rowBreaks()),
            all.top(),
            all.bottom(),
            onSheet(roomDown, percent),
            onSheet(roomDown, percent));
    return new CellRange(area.left(), area.top(), across.get(0)[1], down.get(0)[1]);
  }

  private int percent(Grid of, List<CellRange> areas) {
    PrintSetup.FitPages fit = setup.fit();
    if (fit == null) {
      return setup.percent();
    }
    double share = 1;
    for (CellRange a : areas) {
      long width = of.columns().between(a.left(), a.right());
      long height = of.rows().between(a.top(), a.bottom());
      if (fit.across() > 0 && width > 0) {
        share = Math.min(share, (double) fit.across() * roomAcross / width);
      }
      if (fit.down() > 0 && height > 0) {
        share = Math.min(share, (double) fit.down() * roomDown / height);
      }
    }
    return Math.max(LEAST_PERCENT, (int) Math.floor(share * WHOLE));
  }

  private static long onSheet(long room, int percent) {
    return room * WHOLE / percent;
  }

  private static long titles(Tracks tracks, @Nullable CellRange titles, boolean columns) {
    if (titles == null) {
      return 0;
    }
    return columns
        ? tracks.between(titles.left(), titles.right())
        : tracks.between(titles.top(), titles.bottom());
  }

  private record Axis(Tracks narrow, Tracks wide, SortedSet<Integer> breaks) {}

  /** At most so many pages are looked at on one axis. */
  private static final int MOST_SPANS = 60;

  /** What each page surely holds: from its latest beginning to its earliest end. */
  private static List<int[]> spans(Axis axis, int first, int end, long least, long most) {
    List<int[]> spans = new ArrayList<>();
    int early = first;
    int late = first;
    while (early < end && spans.size() < MOST_SPANS) {
      int earlyEnd = endOfPage(axis.wide, axis.breaks, early, end, least);
      int lateEnd = endOfPage(axis.narrow, axis.breaks, late, end, most);
      if (late < earlyEnd) {
        spans.add(new int[] {late, earlyEnd});
      }
      boolean broken = axis.breaks.contains(earlyEnd);
      early = earlyEnd;
      // A break that somebody set is the same for every reader.
      late = broken ? earlyEnd : Math.max(lateEnd, earlyEnd);
    }
    return spans;
  }

  private static int endOfPage(
      Tracks tracks, SortedSet<Integer> breaks, int first, int end, long room) {
    SortedSet<Integer> later = breaks.tailSet(first + 1);
    int stop = later.isEmpty() ? end : Math.min(end, later.first());
    if (first >= stop || tracks.between(first, stop) <= room) {
      return Math.max(stop, first);
    }
    return Math.max(first + 1, Math.min(stop, tracks.at(tracks.start(first) + Math.max(0, room))));
  }

  private List<PrintPage> pages(List<int[]> across, List<int[]> down, int percent) {
    List<PrintPage> pages = new ArrayList<>();
    for (int[] a : across) {
      for (int[] d : down) {
        CellRange cells = new CellRange(a[0], d[0], a[1], d[1]);
        pages.add(
            new PrintPage(
                cells,
                percent,
                setup.margins().left().pt()
                    + before(
                        a, across.get(0), narrow.columns(), setup.titleColumns(), true, percent)
                    + aside(
                        setup.centredAcross(), narrow.columns(), a[0], a[1], roomAcross, percent),
                setup.margins().top().pt()
                    + before(d, down.get(0), narrow.rows(), setup.titleRows(), false, percent)
                    + aside(setup.centredDown(), narrow.rows(), d[0], d[1], roomDown, percent)));
      }
    }
    return pages;
  }

  private static double before(
      int[] span,
      int[] first,
      Tracks tracks,
      @Nullable CellRange titles,
      boolean columns,
      int percent) {
    return span == first ? 0 : points(titles(tracks, titles, columns), percent);
  }

  private static double aside(
      boolean centred, Tracks tracks, int first, int end, long room, int percent) {
    double spare = points(room * WHOLE / percent - tracks.between(first, end), percent) / 2;
    return centred ? Math.max(0, spare) : 0;
  }

  private static double points(long emu, int percent) {
    return (double) emu * percent / WHOLE / Emu.PER_POINT;
  }
}
