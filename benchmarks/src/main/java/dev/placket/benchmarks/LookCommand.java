package dev.placket.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.benchmarks.order.Looks;
import dev.placket.layout.solve.look.Look;
import dev.placket.layout.units.Rect;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The published measures of the sheets of one pack, before and after a change. */
@Command(
    name = "look",
    description = "Prints the published measures of the sheets that two fit.json files share.",
    mixinStandardHelpOptions = true)
final class LookCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "BEFORE", description = "A fit.json.")
  private Path before = Path.of("");

  @Parameters(index = "1", paramLabel = "AFTER", description = "A fit.json of the same pack.")
  private Path after = Path.of("");

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Map<String, Look> old = looks(before);
    Looks all = new Looks();
    looks(after)
        .forEach(
            (name, now) -> {
              Look then = old.get(name);
              if (then != null) {
                all.add(then, now);
                out.printf(Locale.ROOT, "%s\t%.3f\t%.3f%n", name, then.order(), now.order());
              }
            });
    out.println(all.text());
    out.flush();
    return 0;
  }

  /** The measures of each sheet with flats, by its name. */
  private static Map<String, Look> looks(Path file) {
    Map<String, Look> looks = new LinkedHashMap<>();
    try {
      for (JsonNode sheet : new ObjectMapper().readTree(file.toFile()).path("sheets")) {
        List<Rect> boxes = new ArrayList<>();
        sheet.path("placements").forEach(p -> boxes.add(rect(p.path("inkedBox"))));
        if (!boxes.isEmpty()) {
          looks.put(sheet.path("name").asText(), Look.of(frame(sheet.path("windows")), boxes));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return looks;
  }

  private static Rect frame(JsonNode windows) {
    Rect frame = rect(windows.path(0));
    for (JsonNode window : windows) {
      Rect its = rect(window);
      frame =
          new Rect(
              Math.min(frame.left(), its.left()),
              Math.min(frame.top(), its.top()),
              Math.max(frame.right(), its.right()),
              Math.max(frame.bottom(), its.bottom()));
    }
    return frame;
  }

  private static Rect rect(JsonNode box) {
    return new Rect(
        box.path("left").asDouble(),
        box.path("top").asDouble(),
        box.path("right").asDouble(),
        box.path("bottom").asDouble());
  }
}
