package dev.placket.benchmarks.order;

import dev.placket.layout.solve.look.Look;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Medians of the published measures over many fits, before order and after. */
public final class Looks {
  private static final Map<String, ToDoubleFunction<Look>> MEASURES = new LinkedHashMap<>();

  static {
    MEASURES.put("balance", Look::balance);
    MEASURES.put("equilibrium", Look::equilibrium);
    MEASURES.put("symmetry", Look::symmetry);
    MEASURES.put("sequence", Look::sequence);
    MEASURES.put("cohesion", Look::cohesion);
    MEASURES.put("unity", Look::unity);
    MEASURES.put("proportion", Look::proportion);
    MEASURES.put("simplicity", Look::simplicity);
    MEASURES.put("density", Look::density);
    MEASURES.put("regularity", Look::regularity);
    MEASURES.put("economy", Look::economy);
    MEASURES.put("homogeneity", Look::homogeneity);
    MEASURES.put("rhythm", Look::rhythm);
    MEASURES.put("order", Look::order);
  }

  private final List<Look> before = new ArrayList<>();
  private final List<Look> after = new ArrayList<>();

  /** One sheet laid out both ways. */
  public void add(Look plain, Look ordered) {
    before.add(plain);
    after.add(ordered);
  }

  /** One line for each measure: its name, the medians, and how often it rose and fell. */
  public String text() {
    StringBuilder text = new StringBuilder("measure\tbefore\tafter\trose\tfell\n");
    MEASURES.forEach(
        (name, measure) -> {
          int rose = 0;
          int fell = 0;
          for (int i = 0; i < before.size(); i++) {
            double by = measure.applyAsDouble(after.get(i)) - measure.applyAsDouble(before.get(i));
            rose += by > 1e-9 ? 1 : 0;
            fell += by < -1e-9 ? 1 : 0;
          }
          text.append(
              String.format(
                  Locale.ROOT,
                  "%s\t%.3f\t%.3f\t%d\t%d%n",
                  name,
                  median(before, measure),
                  median(after, measure),
                  rose,
                  fell));
        });
    return text.toString();
  }

  private static double median(List<Look> looks, ToDoubleFunction<Look> measure) {
    double[] sorted = looks.stream().mapToDouble(measure).sorted().toArray();
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }
}
