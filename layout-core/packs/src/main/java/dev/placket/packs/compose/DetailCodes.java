package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackCallout;
import dev.placket.packs.description.PackFlat;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The codes by which callouts name details: the same beside the view and in the detail's caption.
 *
 * @param codes the code of each detail that a callout names, by its identifier
 * @param places where each flat is
 */
record DetailCodes(Map<String, String> codes, Map<String, Place> places) {
  /** No codes. */
  static final DetailCodes NONE = new DetailCodes(Map.of(), Map.of());

  /**
   * Where a flat is.
   *
   * @param flat its description
   * @param path where it is described
   * @param sheet the sheet's identifier
   * @param number the sheet's number; null where the flat may be on one of several
   */
  record Place(PackFlat flat, String path, String sheet, @Nullable Integer number) {}

  /** The codes of a pack; slips are noted. */
  static DetailCodes of(Described described, List<SheetPlan> plans) {
    DetailCodes codes = new DetailCodes(new HashMap<>(), new HashMap<>());
    int number = 1;
    for (SheetPlan plan : plans) {
      for (Map.Entry<String, PackFlat> flat : plan.sheet().flats().entrySet()) {
        boolean fixed = plan.pages() == 1 && !plan.sheet().further();
        String path = "sheets/" + plan.id() + "/flats/" + flat.getKey();
        codes.places.put(
            flat.getKey(), new Place(flat.getValue(), path, plan.id(), fixed ? number : null));
      }
      number += plan.pages();
    }
    Map<String, String> details = new HashMap<>();
    codes.places.values().stream()
        .sorted(java.util.Comparator.comparing(Place::path))
        .forEach(
            place ->
                place
                    .flat()
                    .spots()
                    .callouts()
                    .forEach(
                        (id, callout) ->
                            codes.note(
                                described, place.path() + "/callouts/" + id, callout, details)));
    return codes;
  }

  private void note(
      Described described, String path, PackCallout callout, Map<String, String> details) {
    String detail = callout.detail();
    if (detail.isEmpty() || callout.asks()) {
      return;
    }
    String mark = callout.mark();
    if (!places.containsKey(detail)) {
      described
          .faults()
          .unknown(
              described.places().of(path + "/detail"),
              "no flat of the sheets named",
              detail,
              new TreeSet<>(places.keySet()));
    } else if (mark.isEmpty()) {
      described
          .faults()
          .add(described.places().of(path + "/detail"), "a detail without mark", "a mark, as D1");
    } else if (!mark.equals(codes.getOrDefault(detail, mark))
        || !detail.equals(details.getOrDefault(mark, detail))) {
      described
          .faults()
          .add(
              described.places().of(path + "/mark"),
              "the mark '" + mark + "' for " + detail,
              "one mark for a detail, and one detail for a mark");
    } else {
      codes.put(detail, mark);
      details.put(mark, detail);
    }
  }

  /** The code of a flat; empty if no callout names it. */
  String code(String flat) {
    return codes.getOrDefault(flat, "");
  }
}
