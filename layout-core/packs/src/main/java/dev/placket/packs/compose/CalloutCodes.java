package dev.placket.packs.compose;

import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackCallout;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Codes for the callouts that ask for one: numbers, and codes from D1 on for details, in reading
 * order after those that the pack has or had.
 *
 * @param given the callouts that asked, in the order of their codes
 * @param retired codes that no callout has any more and that the pack does not list as retired:
 *     gaps between those in use
 */
public record CalloutCodes(List<Given> given, List<String> retired) {
  private static final String DETAIL = "D";

  /** Copies the lists. */
  public CalloutCodes {
    given = List.copyOf(given);
    retired = List.copyOf(retired);
  }

  /**
   * A callout and its code.
   *
   * @param path where the description asks for it
   * @param sheet the sheet's identifier
   * @param flat the flat's
   * @param callout the callout's
   * @param code what it gets
   */
  public record Given(String path, String sheet, String flat, String callout, String code) {}

  /** A callout that asks, with its spot. */
  private record Asking(Given its, PackCallout callout, PlanePoint at) {}

  /**
   * The codes for a description. Sheets and flats are taken in their order, the spots of a flat
   * from top to bottom, then from left to right.
   *
   * @throws Refusal with every slip of the description that keeps a spot from being found
   */
  public static CalloutCodes of(Described described, Reading given) throws Refusal {
    List<Asking> asking = new ArrayList<>();
    Set<String> used = new LinkedHashSet<>();
    Map<String, String> details = new HashMap<>();
    SpotSetter spots = new SpotSetter(described, DetailCodes.NONE);
    FlatFiles files = new FlatFiles(described, Composer.reading(described, given));
    described
        .pack()
        .sheets()
        .forEach(
            (sheet, its) ->
                its.flats()
                    .forEach(
                        (id, flat) -> {
                          note(flat, used, details);
                          asking.addAll(asking(sheet, id, flat, spots, files));
                        }));
    described.faults().refuse();
    Map<String, Integer> last = last(used, described.pack().retired());
    List<Given> all = new ArrayList<>();
    for (Asking one : asking) {
      String detail = one.callout.detail();
      String letter = detail.isEmpty() ? "" : DETAIL;
      String code = details.get(detail);
      if (detail.isEmpty() || code == null) {
        code = letter + last.merge(letter, 1, Integer::sum);
        details.put(detail, code);
      }
      Given its = one.its;
      all.add(new Given(its.path, its.sheet, its.flat, its.callout, code));
    }
    return new CalloutCodes(all, gaps(used, described.pack().retired()));
  }

  private static void note(PackFlat flat, Set<String> used, Map<String, String> details) {
    for (PackCallout callout : flat.spots().callouts().values()) {
      if (!callout.mark().isEmpty() && !callout.asks()) {
        used.add(callout.mark());
        if (!callout.detail().isEmpty()) {
          details.put(callout.detail(), callout.mark());
        }
      }
    }
  }

  private static List<Asking> asking(
      String sheet, String id, PackFlat flat, SpotSetter spots, FlatFiles files) {
    List<Asking> asking = new ArrayList<>();
    if (flat.spots().callouts().values().stream().noneMatch(PackCallout::asks)) {
      return asking;
    }
    String path = "sheets/" + sheet + "/flats/" + id;
    FlatFiles.Found found = files.picture(flat, path);
    if (found == null) {
      return asking;
    }
    SpotChecks checks = spots.checks();
    Map<String, PlanePoint> points = spots.points(new FlatSetter.Read(id, flat, path, found, null));
    flat.spots()
        .callouts()
        .forEach(
            (name, callout) -> {
              String at = path + "/callouts/" + name;
              callout.points().forEach(p -> checks.isKnown(p, points, at + "/point"));
              PlanePoint spot =
                  points.get(callout.points().isEmpty() ? "" : callout.points().get(0));
              if (callout.asks() && spot != null) {
                Given its = new Given(at + "/mark", sheet, id, name, "");
                asking.add(new Asking(its, callout, spot));
              }
            });
    asking.sort(
        Comparator.comparingDouble((Asking a) -> a.at.y()).thenComparingDouble(a -> a.at.x()));
    return asking;
  }

  /** The largest number in use or retired, by the letter before it. */
  private static Map<String, Integer> last(Set<String> used, List<String> retired) {
    Map<String, Integer> last = new HashMap<>(Map.of("", 0, DETAIL, 0));
    List<String> all = new ArrayList<>(used);
    all.addAll(retired);
    for (String code : all) {
      String letter = letter(code);
      if (letter != null) {
        last.merge(letter, number(code), Math::max);
      }
    }
    return last;
  }

  private static List<String> gaps(Set<String> used, List<String> retired) {
    Map<String, List<Integer>> numbers = new TreeMap<>();
    for (String code : used) {
      String letter = letter(code);
      if (letter != null) {
        numbers.computeIfAbsent(letter, l -> new ArrayList<>()).add(number(code));
      }
    }
    Map<String, Boolean> gaps = new LinkedHashMap<>();
    numbers.forEach(
        (letter, its) -> {
          int first = its.stream().mapToInt(i -> i).min().orElse(0);
          int end = its.stream().mapToInt(i -> i).max().orElse(0);
          for (int i = first; i < end; i++) {
            gaps.put(letter + i, used.contains(letter + i) || retired.contains(letter + i));
          }
        });
    return gaps.entrySet().stream().filter(e -> !e.getValue()).map(Map.Entry::getKey).toList();
  }

  /** The letter of a numbered code; null for other marks. */
  private static @org.jspecify.annotations.Nullable String letter(String code) {
    return code.matches("D?[1-9][0-9]{0,3}") ? code.startsWith(DETAIL) ? DETAIL : "" : null;
  }

  private static int number(String code) {
    return Integer.parseInt(code.startsWith(DETAIL) ? code.substring(1) : code);
  }
}
