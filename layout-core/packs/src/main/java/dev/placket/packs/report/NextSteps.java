package dev.placket.packs.report;

import dev.placket.layout.density.PrintState;
import dev.placket.packs.placed.PackWeight;
import dev.placket.packs.placed.RasterPrint;
import dev.placket.pictures.base.PrintedDetail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a designer does next, what spoils a sample first: one line for each kind, with the names of
 * the worst few.
 */
final class NextSteps {
  /** So many differences from the files get a line of their own. */
  private static final int CHANGES = 6;

  private final ReportOptions reporting;
  private final boolean several;

  /** The files that are drawn in a way other than they say, by that way. */
  private final Map<String, Set<String>> changed = new LinkedHashMap<>();

  private final Map<StepKind, Map<String, Step>> steps = new EnumMap<>(StepKind.class);

  /**
   * What is wrong with one file.
   *
   * @param alone the sentence where no other file has it
   * @param named its name with the figure that counts, among others
   * @param badness how much it weighs against another
   */
  private record Step(String alone, String named, double badness) {}

  private NextSteps(ReportOptions reporting, boolean several) {
    this.reporting = reporting;
    this.several = several;
  }

  static List<String> of(
      Findings findings,
      List<ReportContent.OfSheet> sheets,
      ReportOptions reporting,
      WrittenFiles made) {
    NextSteps steps = new NextSteps(reporting, sheets.size() > 1);
    for (int i = 0; i < sheets.size(); i++) {
      for (FlatRow row : sheets.get(i).rows()) {
        steps.add(row, i + 1);
      }
    }
    List<String> all = new ArrayList<>(steps.changes());
    steps.steps.forEach((kind, ofKind) -> all.add(line(kind, ofKind.values())));
    all.addAll(OutlineStep.of(sheets, reporting.units()));
    if (!findings.unnamed().isEmpty()) {
      boolean one = findings.unnamed().size() == 1;
      all.add(
          "Name "
              + Figures.some(findings.unnamed())
              + (one ? " after what it shows" : " after what they show")
              + ", as in back or collar-detail.");
    }
    all.addAll(sending(made, findings.weight()));
    return all;
  }

  private List<String> changes() {
    List<String> said = new ArrayList<>();
    Set<String> others = new LinkedHashSet<>();
    int further = 0;
    for (Map.Entry<String, Set<String>> change : changed.entrySet()) {
      if (said.size() < CHANGES) {
        said.add(Figures.some(List.copyOf(change.getValue())) + ": " + change.getKey() + ".");
      } else {
        further++;
        others.addAll(change.getValue());
      }
    }
    if (further > 0) {
      String differences = further == 1 ? " more is" : " more are";
      said.add(
          Figures.some(List.copyOf(others))
              + ": "
              + further
              + differences
              + " not as in the file; the report lists each beside its picture.");
    }
    return said;
  }

  private static String line(StepKind kind, java.util.Collection<Step> steps) {
    List<Step> worst =
        steps.stream().sorted(Comparator.comparingDouble(Step::badness).reversed()).toList();
    return worst.size() == 1
        ? worst.get(0).alone()
        : kind.ofSeveral + Figures.some(worst.stream().map(Step::named).toList()) + ".";
  }

  private void add(FlatRow row, int sheet) {
    RasterPrint raster = row.flat().raster();
    String file = row.file();
    String where = several ? " (sheet " + sheet + ")" : "";
    row.changes().forEach(c -> changed.computeIfAbsent(c, x -> new LinkedHashSet<>()).add(file));
    if (raster != null) {
      pixels(row, raster, file + where);
    } else if (row.state() == PrintState.SOFT || row.heldCrisp()) {
      pictures(row, file + where);
    }
    for (PrintedDetail.Warning w : row.flat().printed().under(reporting.limits())) {
      String figure = reporting.units().fine(w.printed());
      String alone = file + where + ": " + FineWords.sentence(w, reporting.units()) + ".";
      double badness = w.least().pt() / w.printed().pt();
      put(StepKind.of(w.kind()), file, new Step(alone, file + " (" + figure + ")", badness));
    }
  }

  private void pixels(FlatRow row, RasterPrint raster, String file) {
    double badness = raster.wanted().width();
    String source = row.enlarged() ? ", from the drawing itself" : "";
    String export = "Export " + file + " at " + row.wanted() + " pixels" + source + ": ";
    String named = row.file() + " (" + row.wanted() + ")";
    if (row.state() == PrintState.SOFT) {
      String alone = export + "it prints blurred, at " + row.density() + " px/in.";
      put(StepKind.BLURRED, row.file(), new Step(alone, named, badness));
    } else if (row.heldCrisp()) {
      String now = row.size() + " " + reporting.units().sign();
      String alone = export + "its size is limited to " + now + " to stay crisp.";
      put(StepKind.HELD, row.file(), new Step(alone, named, badness));
    } else if (row.enlarged()) {
      String alone = "Export " + file + " again from the drawing: it was enlarged before export.";
      put(StepKind.ENLARGED, row.file(), new Step(alone, row.file(), badness));
    } else if (row.state() == PrintState.HEAVY) {
      put(StepKind.HEAVY, row.file(), new Step(export + "more are not visible.", named, badness));
    }
  }

  /** Of a drawing that has pictures of too few pixels. */
  private void pictures(FlatRow row, String file) {
    String export = "Export " + file + " with more pixels in its pictures: ";
    double badness = 1 / Double.parseDouble(row.density());
    if (row.state() == PrintState.SOFT) {
      String alone = export + "one prints blurred, at " + row.density() + " px/in.";
      put(StepKind.BLURRED, row.file(), new Step(alone, row.file(), badness));
    } else {
      String now = row.size() + " " + reporting.units().sign();
      String alone = export + "its size is limited to " + now + " to keep them crisp.";
      put(StepKind.HELD, row.file(), new Step(alone, row.file(), badness));
    }
  }

  /** Of a file that lies on several sheets the worst counts. */
  private void put(StepKind kind, String file, Step step) {
    steps
        .computeIfAbsent(kind, k -> new LinkedHashMap<>())
        .merge(file, step, (a, b) -> b.badness() > a.badness() ? b : a);
  }

  private static List<String> sending(WrittenFiles made, @Nullable PackWeight weight) {
    List<String> said = new ArrayList<>();
    String size = Figures.bytes(made.mainBytes());
    List<PackWeight.Part> parts = weight == null ? List.of() : weight.parts();
    if (weight != null && weight.isOver()) {
      said.add(tooLarge(made, weight));
    }
    if (!made.written()) {
      said.add("Write the files: this run only checked, and " + made.main() + " has " + size + ".");
      return said;
    }
    said.add("Check it in " + made.page() + ", then on paper: print " + made.main() + " at 100 %.");
    if (parts.isEmpty()) {
      said.add("Send " + made.main() + ": " + size + ".");
    } else {
      said.add(
          (parts.size() == 2 ? "Send both parts" : "Send all " + parts.size() + " parts")
              + ", each in a mail of its own: "
              + parts.stream()
                  .map(p -> p.name() + " (" + Figures.bytes(p.bytes()) + ")")
                  .collect(Collectors.joining(", "))
              + ".");
    }
    return said;
  }

  /** The file that is too large, or the sheets that are so each by itself. */
  private static String tooLarge(WrittenFiles made, PackWeight weight) {
    String heaviest =
        weight.heaviest().isEmpty() ? "" : ", first " + weight.heaviest().get(0).name();
    String remedy = ": print pictures smaller, or use fewer" + heaviest + ".";
    if (weight.parts().isEmpty()) {
      return made.main() + " is over the size limit by " + Figures.bytes(weight.over()) + remedy;
    }
    List<String> over =
        weight.parts().stream()
            .filter(p -> p.bytes() > weight.limit())
            .map(p -> "sheet " + p.first() + " (" + Figures.bytes(p.bytes()) + ")")
            .toList();
    return "Over the size limit by itself: " + String.join(", ", over) + remedy;
  }
}
