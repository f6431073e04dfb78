package dev.placket.demo.result;

import dev.placket.demo.PackWeight;
import dev.placket.demo.RasterPrint;
import dev.placket.layout.density.PrintState;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a designer does next, what spoils the sheet first. */
final class NextSteps {
  private final Telling telling;
  private final boolean several;
  private final Map<String, Step> blurred = new LinkedHashMap<>();
  private final Map<String, Step> held = new LinkedHashMap<>();
  private final Map<String, Step> enlarged = new LinkedHashMap<>();
  private final Map<String, Step> fine = new LinkedHashMap<>();
  private final Map<String, Step> heavy = new LinkedHashMap<>();

  /** A step, and how much it weighs against another for the same file. */
  private record Step(String words, double weight) {}

  private NextSteps(Telling telling, boolean several) {
    this.telling = telling;
    this.several = several;
  }

  static List<String> of(
      Findings findings, List<Account.OfSheet> sheets, Telling telling, Made made) {
    NextSteps steps = new NextSteps(telling, sheets.size() > 1);
    for (int i = 0; i < sheets.size(); i++) {
      for (FlatRow row : sheets.get(i).rows()) {
        steps.add(row, i + 1);
      }
    }
    List<String> all = new ArrayList<>();
    for (Map<String, Step> kind :
        List.of(steps.blurred, steps.held, steps.enlarged, steps.fine, steps.heavy)) {
      kind.values().forEach(s -> all.add(s.words()));
    }
    for (String name : findings.unnamed()) {
      all.add("Name " + name + " for what it shows, as in back or collar-detail.");
    }
    all.addAll(sending(made, findings.weight()));
    return all;
  }

  private void add(FlatRow row, int sheet) {
    RasterPrint raster = row.flat().raster();
    String file = row.file();
    String where = several ? " (sheet " + sheet + ")" : "";
    if (raster != null) {
      double weight = raster.wanted().width();
      String anew = row.enlarged() ? ", from the drawing itself" : "";
      String export = "Export " + file + where + " at " + row.wanted() + " pixels" + anew + ": ";
      if (row.state() == PrintState.SOFT) {
        put(blurred, file, export + "it prints blurred, at " + row.density() + " px/in.", weight);
      } else if (row.heldCrisp()) {
        String now = row.size() + " " + telling.units().sign();
        put(held, file, export + "it is held at " + now + " to stay crisp.", weight);
      } else if (row.enlarged()) {
        String why = ": it was enlarged before export.";
        put(enlarged, file, "Export " + file + where + " anew from the drawing" + why, weight);
      } else if (row.state() == PrintState.HEAVY) {
        put(heavy, file, export + "what it has more is never seen.", weight);
      }
    }
    for (String words : FineWords.of(row.flat().printed(), telling.limits(), telling.units())) {
      // One for each kind of thing: the words before the first figure tell them apart.
      String kind = file + words.replaceAll("[0-9].*", "");
      put(
          fine,
          kind,
          file + where + ": " + words + ".",
          -row.flat().placement().scale().doubleValue());
    }
  }

  private static void put(Map<String, Step> steps, String key, String words, double weight) {
    Step before = steps.get(key);
    if (before == null || before.weight() < weight) {
      steps.put(key, new Step(words, weight));
    }
  }

  private static List<String> sending(Made made, @Nullable PackWeight weight) {
    List<String> said = new ArrayList<>();
    String size = Figures.bytes(made.mainBytes());
    if (weight != null && weight.over() > 0) {
      String heaviest =
          weight.heaviest().isEmpty() ? "" : ", first " + weight.heaviest().get(0).name();
      said.add(
          made.main()
              + " is too heavy to mail by "
              + Figures.bytes(weight.over())
              + ": make pictures smaller on their sheets, or fewer"
              + heaviest
              + ".");
    }
    said.add(
        "Look it over in " + made.page() + ", then on paper: print " + made.main() + " at 100 %.");
    said.add("Send " + made.main() + ": " + size + ".");
    return said;
  }
}
