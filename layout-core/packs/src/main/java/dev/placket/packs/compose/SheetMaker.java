package dev.placket.packs.compose;

import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackBand;
import dev.placket.packs.description.PackCell;
import dev.placket.packs.description.PackWindow;
import dev.placket.packs.description.Words;
import dev.placket.packs.flats.SheetSpacing;
import dev.placket.packs.folder.Ruling;
import dev.placket.packs.page.Inked;
import dev.placket.packs.page.Page;
import dev.placket.packs.page.SheetTexts;
import dev.placket.packs.table.TablePiece;
import dev.placket.packs.text.Cell;
import dev.placket.packs.text.TableRow;
import dev.placket.packs.text.TextBlock.Stand;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Makes one page of a plan: its cells, rules, windows and flats. */
final class SheetMaker {

  private final Described described;
  private final SheetPlan plan;
  private final int page;
  private final CellSetter setter;
  private final FlatSetter flats;
  private final CellPicture pictures;
  private final PackText text;
  private final List<Cell> cells = new ArrayList<>();
  private final List<Rect> edges = new ArrayList<>();
  private final List<Rule> rules = new ArrayList<>();
  private final List<Rect> tints = new ArrayList<>();
  private final List<Rect> blacks = new ArrayList<>();
  private final List<Inked> inked = new ArrayList<>();
  private final List<TableRow> rows = new ArrayList<>();
  private final Map<String, SheetTexts.CellText> texts = new LinkedHashMap<>();
  private final Map<String, Rect> windows = new LinkedHashMap<>();
  private final Map<String, String> rowWindows = new LinkedHashMap<>();

  SheetMaker(
      Described described,
      SheetPlan plan,
      int page,
      CellSetter setter,
      FlatSetter flats,
      CellPicture pictures,
      PackText text) {
    this.pictures = pictures;
    this.described = described;
    this.plan = plan;
    this.page = page;
    this.setter = setter;
    this.flats = flats;
    this.text = text;
  }

  ComposedSheet make() {
    SheetFrame frame = plan.frame();
    band(described.pack().header(), frame.header(), "header");
    if (plan.likeFirst(page)) {
      body();
    } else {
      Map.Entry<String, TablePiece> entry = plan.further().get(page - 1);
      Rect area = Objects.requireNonNull(frame.body().areas().get(entry.getKey()));
      table(entry.getKey(), entry.getValue(), SheetTables.further(area, frame.between()));
    }
    band(described.pack().foot(), frame.foot(), "foot");
    String id = page == 0 ? plan.id() : plan.id() + "-" + (page + 1);
    String name = text.beside(plan.sheet().name(), "sheets/" + plan.id() + "/name");
    SheetFlats placed = SheetFlats.of(described, plan, page, windows, rowWindows, flats, text);
    return new ComposedSheet(
        id,
        name,
        new Page(sheet(name), cells, tints, blacks, inked, rows),
        placed.items(),
        placed.ratios(),
        placed.trueSize(),
        spacing(),
        plan.sheet().rules(),
        plan.sheet().further() && page == 0,
        new SheetTexts(page == 0 ? texts : Map.of(), page == 0 ? plan.texts() : Map.of()));
  }

  private void band(@Nullable PackBand band, @Nullable LaidGrid grid, String path) {
    if (band == null || grid == null) {
      return;
    }
    Map<Row, Length> most = new HashMap<>();
    band.cells()
        .forEach(
            (name, cell) -> {
              Rect box = grid.areas().get(name);
              if (box != null) {
                Length step = setter.step(cell, box, path + "/cells/" + name, Stand.FOOT);
                most.merge(Row.of(box, cell), step, (a, b) -> a.compareTo(b) < 0 ? a : b);
              }
            });
    band.cells()
        .forEach(
            (name, cell) -> {
              Rect box = grid.areas().get(name);
              if (box != null) {
                Length its = Objects.requireNonNull(most.get(Row.of(box, cell)));
                add(cell, path + " " + name, box, path + "/cells/" + name, Stand.FOOT, its);
              }
            });
  }

  /**
   * Cells of a band whose values are read across, and so are set in one size.
   *
   * @param foot where they end, in points
   * @param size the height of capitals that they state
   */
  private record Row(double foot, Length size) {
    static Row of(Rect box, PackCell cell) {
      return new Row(box.bottom(), cell.size());
    }
  }

  private void body() {
    String path = "sheets/" + plan.id();
    plan.frame()
        .body()
        .areas()
        .forEach(
            (name, box) -> {
              PackCell cell = plan.sheet().cells().get(name);
              PackWindow window = plan.sheet().windows().get(name);
              TablePiece piece = plan.first().get(name);
              if (cell != null) {
                add(cell, name, box, path + "/cells/" + name, Stand.TOP, cell.size());
              } else if (window != null) {
                window(name, window, box, path + "/windows/" + name);
              } else if (piece != null) {
                table(name, piece, box);
              }
            });
  }

  private void add(PackCell cell, String name, Rect box, String path, Stand stand, Length most) {
    String lead = text.phrases().languages().get(0);
    boolean band = path.startsWith("header/") || path.startsWith("foot/");
    if (!band) {
      String caption = text.in(cell.caption(), lead, path + "/caption");
      texts.put(name, new SheetTexts.CellText(caption, text.in(cell.text(), lead, path + "/text")));
    } else if (plan.id().equals(described.pack().sheets().keySet().iterator().next())) {
      texts.put(name, new SheetTexts.CellText(first(cell.caption()), first(cell.text())));
    }
    cells.add(setter.set(cell, name, box, path, stand, most));
    String shown = text.in(cell.caption(), lead, path + "/caption");
    String alternative = shown.isBlank() ? String.valueOf(cell.picture()) : shown;
    Inked picture = pictures.of(cell, setter.under(cell, box, path), alternative, path);
    if (picture != null) {
      inked.add(picture);
    }
    edges.add(box);
  }

  /** As it is described, since each sheet fills the fields otherwise. */
  private String first(Words words) {
    return words.in(described.pack().languages()).stream().findFirst().orElse("");
  }

  private void window(String name, PackWindow window, Rect box, String path) {
    windows.put(name, box);
    edges.add(box);
    for (int i = 0; i < window.corners().size(); i++) {
      PackWindow.Corner corner = window.corners().get(i);
      String at = path + "/corners/" + i;
      if (corner.width().pt() > box.width() || corner.height().pt() > box.height()) {
        described
            .faults()
            .add(described.places().of(at), "a corner larger than its window", "a smaller one");
        continue;
      }
      String word = corner.at().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
      add(corner.cell(), name + " " + word, in(corner, box), at, Stand.FOOT, corner.cell().size());
    }
  }

  private Rect in(PackWindow.Corner corner, Rect b) {
    Snap x = plan.frame().lines().across();
    Snap y = plan.frame().lines().down();
    double w = corner.width().pt();
    double h = corner.height().pt();
    return switch (corner.at()) {
      case TOP_LEFT -> new Rect(b.left(), b.top(), x.line(b.left() + w), y.line(b.top() + h));
      case TOP_RIGHT -> new Rect(x.line(b.right() - w), b.top(), b.right(), y.line(b.top() + h));
      case BOTTOM_LEFT ->
          new Rect(b.left(), y.line(b.bottom() - h), x.line(b.left() + w), b.bottom());
      case BOTTOM_RIGHT ->
          new Rect(x.line(b.right() - w), y.line(b.bottom() - h), b.right(), b.bottom());
    };
  }

  private void table(String name, TablePiece piece, Rect area) {
    cells.addAll(piece.cells());
    edges.add(area);
    rules.addAll(piece.rules());
    tints.addAll(piece.tints());
    blacks.addAll(piece.blacks());
    rows.addAll(piece.rows());
    for (TablePiece.RowWindow row : piece.windows()) {
      String window = name + " " + row.flat();
      windows.put(window, row.box());
      rowWindows.put(row.flat(), window);
    }
  }

  private Sheet sheet(String name) {
    SheetFrame frame = plan.frame();
    TreeSet<Double> x = new TreeSet<>(frame.body().columns());
    TreeSet<Double> y = new TreeSet<>(frame.body().rows());
    windows
        .values()
        .forEach(
            b -> {
              x.addAll(List.of(b.left(), b.right()));
              y.addAll(List.of(b.top(), b.bottom()));
            });
    List<Double> columns = List.copyOf(x);
    List<Double> rows = List.copyOf(y);
    List<SheetWindow> named = new ArrayList<>();
    windows.forEach(
        (window, b) ->
            named.add(
                new SheetWindow(
                    window,
                    new GridArea(
                        columns.indexOf(b.left()),
                        rows.indexOf(b.top()),
                        columns.indexOf(b.right()),
                        rows.indexOf(b.bottom())))));
    List<Rule> all = new ArrayList<>(Ruling.of(frame.inside(), edges));
    all.addAll(rules);
    List<LabelledCell> labelled =
        cells.stream().map(c -> new LabelledCell(c.name(), c.box())).toList();
    GridLines lines = new GridLines(columns, rows);
    return new Sheet(name, frame.paper(), frame.margins(), lines, named, labelled, all);
  }

  private Spacing spacing() {
    Length gap = plan.sheet().gap();
    Length clearance = plan.sheet().clearance();
    List<Spacing.PairGap> pairs = gap == null ? List.of(SheetSpacing.VIEWS_GAP) : List.of();
    return Spacing.NONE
        .withGap(gap == null ? SheetSpacing.GAP : gap)
        .withClearance(clearance == null ? SheetSpacing.CLEARANCE : clearance)
        .withPairs(pairs);
  }
}
