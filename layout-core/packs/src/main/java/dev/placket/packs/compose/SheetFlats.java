package dev.placket.packs.compose;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Grouping;
import dev.placket.layout.units.Rect;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackLeaders;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.flats.FlatBoxes;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.ScaleLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The flats of one page.
 *
 * @param items what the solver sees and where it came from
 * @param ratios the ratio of each that has one
 * @param trueSize those with the bar by which a print at true size is checked
 */
record SheetFlats(List<FlatSet.Item> items, Map<String, Double> ratios, Set<String> trueSize) {

  /**
   * The flats of a page, each with its windows.
   *
   * @param windows all windows of the page
   * @param rowWindows the window of each flat that has one in a row of a table
   */
  static SheetFlats of(
      Described described,
      SheetPlan plan,
      int page,
      Map<String, Rect> windows,
      Map<String, String> rowWindows,
      FlatSetter setter,
      PackText text) {
    PackSheet sheet = plan.sheet();
    String path = "sheets/" + plan.id() + "/flats";
    Map<String, PackFlat> here = new LinkedHashMap<>();
    Map<String, List<String>> allowed = new LinkedHashMap<>();
    sheet
        .flats()
        .forEach(
            (id, flat) -> {
              List<String> own = windows(flat, id, sheet, plan, rowWindows, page);
              if (own == null) {
                described
                    .faults()
                    .unknown(
                        described.places().of(path + "/" + id),
                        "a flat without window, the flat",
                        id,
                        List.of("window: " + String.join(" or ", sheet.windows().keySet())));
              } else if (!own.isEmpty() && windows.keySet().containsAll(own)) {
                here.put(id, flat);
                allowed.put(id, own);
              }
            });
    allowed.putAll(FlatBoxes.of(allowed));
    unknownRows(described, plan, rowWindows);
    List<FlatSetter.Read> read = setter.read("sheets/" + plan.id(), here);
    Map<String, Double> grouped = grouped(read);
    Map<String, ScaleLine> scales = setter.scales(read, grouped, text);
    boolean even = read.stream().noneMatch(r -> r.flat().role().isView());
    List<FlatSet.Item> items = new ArrayList<>();
    Map<String, Double> ratios = new LinkedHashMap<>();
    Set<String> trueSize = new LinkedHashSet<>();
    for (FlatSetter.Read r : read) {
      // One bar checks the print of a sheet; flats that may go on to another take theirs along.
      boolean bar = r.flat().trueSize() && (trueSize.isEmpty() || sheet.further());
      boolean inRow = rowWindows.containsKey(r.id());
      FlatSet.Item item =
          setter.item(
              r,
              allowed.getOrDefault(r.id(), List.of()),
              inRow,
              grouped.get(r.id()),
              even || inRow,
              ScaleRounding.line(described.pack(), r.flat(), scales.get(r.id())),
              inRow ? PackLeaders.NONE : sheet.leaders(),
              bar,
              text);
      if (item != null) {
        String list = Colourways.list(r, read);
        FlatSet.Item listed = list == null ? item : listed(item, list);
        items.add(sheet.further() && !inRow ? mayGoOn(listed) : listed);
        if (item.flat().group() != null) {
          ratios.put(r.id(), item.flat().group().ratio());
        }
        if (bar) {
          trueSize.add(r.id());
        }
      }
    }
    List<FlatSet.Item> all =
        FlatSet.besideFront(items, id -> Objects.requireNonNull(here.get(id)).least() == null);
    return new SheetFlats(all, ratios, trueSize);
  }

  private static FlatSet.Item listed(FlatSet.Item item, String list) {
    return item.with(item.flat().withList(list));
  }

  /** Views stay where they are; so does what is held. */
  private static FlatSet.Item mayGoOn(FlatSet.Item item) {
    Flat flat = item.flat();
    boolean may = !flat.role().isView() && !flat.held().any();
    return item.with(flat.withMayFlow(may));
  }

  /** The windows a flat may use on this page; none where it lies on another; null without one. */
  private static @org.jspecify.annotations.Nullable List<String> windows(
      PackFlat flat,
      String id,
      PackSheet sheet,
      SheetPlan plan,
      Map<String, String> rowWindows,
      int page) {
    String inRow = rowWindows.get(id);
    if (inRow != null) {
      return List.of(inRow);
    }
    if (plan.hasRowFor(id)) {
      return List.of();
    }
    if (!flat.windows().isEmpty()) {
      return page == 0 ? flat.windows() : List.of();
    }
    if (sheet.windows().size() == 1) {
      return page == 0 ? List.copyOf(sheet.windows().keySet()) : List.of();
    }
    return null;
  }

  private static void unknownRows(
      Described described, SheetPlan plan, Map<String, String> rowWindows) {
    Set<String> known = plan.sheet().flats().keySet();
    rowWindows.forEach(
        (flat, window) -> {
          if (!known.contains(flat)) {
            String table = window.substring(0, window.length() - flat.length() - 1);
            String at = "sheets/" + plan.id() + "/tables/" + table;
            described
                .faults()
                .unknown(described.places().of(at), "a row for the flat", flat, known);
          }
        });
  }

  /** Views that say nothing of their scale share one where their drawn heights agree. */
  static Map<String, Double> grouped(List<FlatSetter.Read> read) {
    List<Grouping.Candidate> candidates =
        read.stream()
            .filter(r -> r.flat().scaling().group() == null && r.flat().scaling().share() == null)
            .filter(r -> !r.flat().trueSize())
            .map(
                r ->
                    new Grouping.Candidate(
                        r.id(), r.flat().role(), r.ink().height(), FlatSet.unit(r.picture())))
            .toList();
    Map<String, Double> ratios = Grouping.views(candidates);
    boolean measured =
        read.stream().anyMatch(r -> ratios.containsKey(r.id()) && FlatSetter.isMeasured(r.flat()));
    if (measured) {
      // Lines of measure are compared across the views.
      ratios.replaceAll((id, ratio) -> 1.0);
    }
    return ratios;
  }
}
