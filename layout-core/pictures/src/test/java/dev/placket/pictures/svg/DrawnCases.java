package dev.placket.pictures.svg;

import dev.placket.pictures.svg.DrawnCase.Check;
import dev.placket.pictures.svg.DrawnCase.Form;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the cases; the head of {@code cases/paint.txt} says how they are written. */
final class DrawnCases {
  private static final List<String> FILES =
      List.of("everywhere", "places", "paint", "colours", "servers", "text", "together");

  private final List<DrawnCase> cases = new ArrayList<>();
  private final Map<String, String> parts = new LinkedHashMap<>();

  private DrawnCases() {}

  static List<DrawnCase> all() {
    DrawnCases read = new DrawnCases();
    FILES.forEach(read::file);
    return List.copyOf(read.cases);
  }

  private void file(String name) {
    parts.clear();
    String file = "cases/" + name + ".txt";
    List<String> lines = List.of(text(file).split("\n"));
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.startsWith("let ")) {
        String[] part = line.substring(4).split(" = ", 2);
        parts.put("$" + part[0].strip(), whole(part[1].strip()));
      } else if (line.startsWith("@ ")) {
        int end = i + 1;
        while (end < lines.size() && !lines.get(end).startsWith("@ ")) {
          end++;
        }
        block(name, i, lines.subList(i, end));
      }
    }
  }

  private static String text(String file) {
    try (InputStream in = DrawnCases.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(file, e);
    }
  }

  private String whole(String fragment) {
    String whole = fragment;
    for (Map.Entry<String, String> part : parts.entrySet()) {
      whole = whole.replace(part.getKey(), part.getValue());
    }
    return whole;
  }

  private void block(String file, int first, List<String> lines) {
    String[] head = lines.get(0).substring(2).split(" \\| ", 2);
    if (head.length < 2) {
      throw new IllegalStateException(file + ":" + (first + 1) + ": name its clause after ' | '");
    }
    Block block = new Block(head[0].strip(), head[1].strip());
    for (int i = 1; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty() && !line.startsWith("# ") && !line.startsWith("let ")) {
        block.line(file + ":" + (first + i + 1), whole(line));
      }
    }
    cases.addAll(block.cases());
  }

  /** Drawings, and values with what they show. */
  private static final class Block {
    private final String title;
    private final String clause;
    private final List<String> drawings = new ArrayList<>();
    private final List<Value> values = new ArrayList<>();
    private final List<String> others = new ArrayList<>();
    private String second = "";

    Block(String title, String clause) {
      this.title = title;
      this.clause = clause;
    }

    void line(String place, String line) {
      if (line.startsWith("in ")) {
        drawings.add(line.substring(3));
      } else if (line.startsWith("or ")) {
        others.add(line.substring(3));
      } else if (line.startsWith("librsvg: ")) {
        second = line.substring(9);
      } else {
        String[] sides = line.split(" => ", 2);
        if (sides.length < 2) {
          throw new IllegalStateException(place + ": in, or, librsvg:, let, or VALUE => SHOWN");
        }
        for (String value : sides[0].split(" ; ")) {
          values.add(
              new Value(
                  place, value.strip().replace("''", ""), Checks.of(place, sides[1].strip())));
        }
      }
    }

    List<DrawnCase> cases() {
      List<DrawnCase> found = new ArrayList<>();
      boolean together = title.startsWith("together: ");
      for (String written : together ? List.of("") : List.of(title.split(" +"))) {
        for (String drawing : drawings) {
          values.forEach(v -> found.add(made(written, drawing, v, together)));
        }
      }
      return found;
    }

    private DrawnCase made(String written, String drawing, Value v, boolean together) {
      List<String> contrasts = new ArrayList<>(others);
      if (!together) {
        values.stream().map(Value::value).filter(o -> !o.equals(v.value())).forEach(contrasts::add);
      }
      return new DrawnCase(
          v.place(),
          written.replaceFirst("^(style|attr):", ""),
          Form.of(written),
          together ? title : v.value(),
          clause,
          drawing,
          v.check(),
          List.copyOf(contrasts),
          second);
    }
  }

  private record Value(String place, String value, Check check) {}
}
