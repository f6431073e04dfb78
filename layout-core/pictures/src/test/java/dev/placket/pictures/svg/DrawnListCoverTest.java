package dev.placket.pictures.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.pictures.css.PageSize;
import dev.placket.pictures.css.StyleSheets;
import dev.placket.pictures.css.TooManySteps;
import dev.placket.pictures.svg.DrawnCase.Note;
import dev.placket.pictures.svg.DrawnCase.Refused;
import dev.placket.pictures.svg.DrawnCase.Said;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Every line of the list has its cases, and every case the line that it is about. */
class DrawnListCoverTest {
  private static final String HERE = "here='' ";
  private static final long STEPS = 100_000;

  /** What has to occur of a class of value, as patterns. */
  private static final Map<String, List<String>> KINDS =
      Map.of(
          "<number>", List.of("\\d+", "\\d*\\.\\d+"),
          "<percentage>", List.of(".*%"),
          "<angle>", List.of(".*deg", ".*grad", ".*[^g]rad", ".*turn"),
          "<em>", List.of(".*em", ".*ex"),
          "<length>",
              List.of(
                  "[-\\d.]+",
                  ".*px",
                  ".*pt",
                  ".*pc",
                  ".*mm",
                  ".*cm",
                  ".*in",
                  ".*em",
                  ".*ex",
                  ".*%"),
          "<lengths>", List.of("[\\d.]+ [\\d.]+", "[\\d.]+,[\\d.]+", ".*mm.*", ".*%.*"),
          "<colour>",
              List.of(
                  "#[0-9a-f]{3}",
                  "#[0-9a-f]{6}", "rgb\\(\\d+, ?\\d+, ?\\d+\\)", "rgb\\(.*%.*\\)", "[a-z]+"),
          "<url>", List.of("url\\(#.*\\)", "url\\(\".*\\)"),
          "<fallback>", List.of(".*\\) none", ".*\\) currentColor", ".*\\) #.*"),
          "<transform>",
              List.of(
                  "matrix.*",
                  "translate.*",
                  "scale.*",
                  "rotate.*",
                  "skewX.*",
                  "skewY.*",
                  ".*\\).+\\)"));

  private final DrawnList list = DrawnList.shipped();
  private final DrawnLookup lines = new DrawnLookup(list, new Noted());
  private final Map<String, Set<String>> values = new HashMap<>();
  private final Map<String, Set<String>> named = new HashMap<>();
  private final Map<Integer, Set<String>> elements = new HashMap<>();

  @Test
  void everyCaseIsAboutALineThatSaysTheSame() {
    assertEquals(List.of(), decided());
  }

  @Test
  void everyLineHasItsCases() {
    decided();
    List<String> faults = new ArrayList<>();
    raw().forEach(raw -> raw.missing(faults));
    assertEquals(List.of(), faults);
  }

  private List<String> decided() {
    List<String> faults = new ArrayList<>();
    for (DrawnCase c : DrawnCases.all()) {
      if (!c.name().isEmpty()) {
        decided(c, faults);
      }
    }
    return faults;
  }

  private void decided(DrawnCase c, List<String> faults) {
    Element root = document(c);
    styled(root);
    Element e = marked(root);
    if (e == null) {
      faults.add(c.place() + ": has no {} in its drawing: " + c.template());
      return;
    }
    ElementProperties given = given(e);
    // A shorthand was taken apart.
    Element stated = given.value(c.name()).isEmpty() ? marked(document(c)) : null;
    if (stated != null) {
      given = given(stated);
    }
    Entry entry = lines.decides(e, given, c.name());
    String verdict =
        entry != null ? entry.verdict() : list.of(c.name()).isEmpty() ? "name" : "value";
    boolean refused =
        c.check() instanceof Said || (c.check() instanceof Refused && !verdict.equals(Entry.RIGHT));
    String expected = c.check() instanceof Note note ? note.key() : Entry.RIGHT;
    if (!verdict.equals(expected) && !refused) {
      faults.add(
          c.place() + ": the list says " + verdict + ", the case " + expected + ": " + c.title());
    }
    named.computeIfAbsent(c.name(), k -> new HashSet<>()).add(c.value());
    if (entry != null) {
      values
          .computeIfAbsent(entry.line() + " " + entry.name(), k -> new HashSet<>())
          .add(c.value());
      elements.computeIfAbsent(entry.line(), k -> new HashSet<>()).add(e.getLocalName());
    }
  }

  private static Element document(DrawnCase c) {
    return AuditTest.root(Shots.document(c.template().replace("{}", HERE + c.set())));
  }

  private static void styled(Element root) {
    try {
      StyleSheets.apply(root.getOwnerDocument(), new PageSize(40, 40), STEPS);
    } catch (TooManySteps e) {
      throw new IllegalStateException(e);
    }
  }

  private static @Nullable Element marked(Element e) {
    if (e.hasAttribute("here")) {
      e.removeAttribute("here");
      return e;
    }
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      Element found = n instanceof Element child ? marked(child) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private ElementProperties given(Element e) {
    ElementProperties above =
        e.getParentNode() instanceof Element p ? given(p) : ElementProperties.NOTHING;
    return ElementProperties.of(e, above, list.group("inherited"));
  }

  private List<Raw> raw() {
    List<Raw> all = new ArrayList<>();
    try (InputStream in = DrawnList.class.getResourceAsStream("drawn.tsv")) {
      String[] text = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n");
      for (int i = 0; i < text.length; i++) {
        if (!text[i].isBlank() && !text[i].startsWith("#") && !text[i].startsWith("@")) {
          String[] cells = text[i].split("\t");
          all.add(new Raw(i + 1, cells[0].split(" +"), cells[1].split(" +"), cells[2].split(" +")));
        }
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return all;
  }

  /** A line as it is written. */
  private final class Raw {
    private final int line;
    private final String[] on;
    private final String[] names;
    private final String[] words;

    Raw(int line, String[] on, String[] names, String[] words) {
      this.line = line;
      this.on = on;
      this.names = names;
      this.words = words;
    }

    void missing(List<String> faults) {
      Set<String> all = new HashSet<>();
      for (String name : names) {
        Set<String> seen = values.getOrDefault(line + " " + name, Set.of());
        all.addAll(named.getOrDefault(name, Set.of()));
        if (seen.isEmpty()) {
          faults.add(at() + "no case for '" + name + "'" + howTo(name));
        } else {
          words(name, seen, faults);
        }
      }
      kinds(all, faults);
      for (String element : on) {
        if (list.group(element).isEmpty()
            && !elements.getOrDefault(line, Set.of()).contains(element)) {
          faults.add(at() + "no case on a <" + element + ">" + howTo(names[0]));
        }
      }
    }

    private void words(String name, Set<String> seen, List<String> faults) {
      Set<String> low = new TreeSet<>();
      seen.forEach(v -> low.add(v.toLowerCase(Locale.ROOT)));
      for (String word : words) {
        if (!word.startsWith("<")
            && !word.equals("*")
            && !low.contains(word.toLowerCase(Locale.ROOT))) {
          faults.add(
              at() + "no case for '" + name + "' with the word '" + word + "'" + howTo(name));
        }
      }
    }

    private void kinds(Set<String> all, List<String> faults) {
      for (String word : words) {
        for (String kind : KINDS.getOrDefault(word, List.of())) {
          if (all.stream().noneMatch(v -> v.matches(kind))) {
            faults.add(at() + "no case of " + word + " like " + kind + howTo(names[0]));
          }
        }
      }
    }

    private String at() {
      return "drawn.tsv:" + line + ": ";
    }

    private String howTo(String name) {
      return "; add one under '@ "
          + name
          + "' to a file of cases/ (the head of paint.txt says how)";
    }
  }
}
