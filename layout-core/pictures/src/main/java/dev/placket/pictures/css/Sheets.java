package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.htmlunit.cssparser.parser.selector.Selector;

/**
 * Reads style sheets into rules. The text is cut at braces and semicolons here, as CSS Syntax 3
 * does, and each selector and query is handed to the parser by itself: so a fault costs what CSS
 * says it costs, where the parser on its own would drop more.
 */
final class Sheets {
  /** At-rules inside one another. */
  private static final int DEEPEST = 16;

  private final List<StyleRule> rules = new ArrayList<>();
  private final CascadeLayers layers = new CascadeLayers();
  private final Selectors selectors = new Selectors();
  private final PrintMedia media;
  private final Declarations declarations;
  private final Notes notes;
  private final WorkBudget steps;
  private int order;

  Sheets(PrintMedia media, Declarations declarations, Notes notes, WorkBudget steps) {
    this.media = media;
    this.declarations = declarations;
    this.notes = notes;
    this.steps = steps;
  }

  List<StyleRule> rules() {
    return rules;
  }

  /** The order of the layers that the sheets name. */
  CascadeLayers layers() {
    return layers;
  }

  /** Adds the rules of a sheet. */
  void add(String text) throws TooManySteps {
    add(Scan.withoutComments(text), "", 0);
  }

  private void add(String text, String layer, int depth) throws TooManySteps {
    if (depth > DEEPEST) {
      notes.add("style rules deep inside one another are left out");
      return;
    }
    steps.take(text.length());
    int i = 0;
    while (i < text.length()) {
      char c = text.charAt(i);
      if (Character.isWhitespace(c)) {
        i++;
      } else if (text.startsWith("<!--", i)) {
        i += 4;
      } else if (text.startsWith("-->", i)) {
        i += 3;
      } else if (c == '@') {
        i = atRule(text, i, layer, depth);
      } else {
        int brace = Scan.end(text, i, "{");
        int close = brace < text.length() ? Scan.closed(text, brace) : brace;
        if (brace < text.length()) {
          rule(text.substring(i, brace), inside(text, brace, close), layer, depth);
        } else {
          notes.add("the style rule " + Notes.quoted(text.substring(i)) + " is left out");
        }
        i = close;
      }
    }
  }

  private static String inside(String text, int brace, int close) {
    boolean closed = close > brace + 1 && text.charAt(close - 1) == '}';
    return text.substring(brace + 1, closed ? close - 1 : close);
  }

  private int atRule(String text, int from, String layer, int depth) throws TooManySteps {
    int name = from + 1;
    while (name < text.length() && Scan.isName(text.charAt(name))) {
      name++;
    }
    String keyword = text.substring(from + 1, name).toLowerCase(Locale.ROOT);
    int end = Scan.end(text, name, ";{");
    String prelude = text.substring(name, end).strip();
    if (end >= text.length() || text.charAt(end) == ';') {
      statement(keyword, prelude, layer);
      return end + 1;
    }
    int close = Scan.closed(text, end);
    String inside = inside(text, end, close);
    switch (keyword) {
      case "media" -> {
        if (media.answers(prelude)) {
          add(inside, layer, depth + 1);
        }
      }
      case "layer" -> add(inside, layers.declare(layer, prelude), depth + 1);
      case "font-face", "page", "keyframes", "-webkit-keyframes", "-moz-keyframes", "property" -> {
        // Nothing of a drawing at rest; a family that is not given is noted where text asks for it.
      }
      default -> notes.add("the styles inside " + Notes.quoted("@" + keyword) + " are left out");
    }
    return close;
  }

  private void statement(String keyword, String prelude, String layer) {
    switch (keyword) {
      case "layer" -> Scan.split(prelude, ",").forEach(name -> layers.declare(layer, name));
      case "import" ->
          notes.add(
              "a style sheet outside of the drawing (@import) is left out; export with the styles"
                  + " inside");
      case "charset", "namespace" -> {
        // Says nothing of the look.
      }
      default -> notes.add("the styles of " + Notes.quoted("@" + keyword) + " are left out");
    }
  }

  private void rule(String prelude, String body, String layer, int depth) throws TooManySteps {
    List<Selector> list = selectors.read(prelude);
    if (list == null) {
      notes.add("the style rule for " + Notes.quoted(prelude) + " is not understood and left out");
      return;
    }
    if (list.stream().anyMatch(Selectors::isGenerated)) {
      notes.addPlain("what the style rule for " + Notes.quoted(prelude) + " adds is left out");
    }
    Block block = Block.of(body, notes);
    List<Declaration> accepted = declarations.accepted(block.declarations());
    for (Selector selector : list) {
      rules.add(new StyleRule(selector, Specificity.of(selector), layer, order, accepted));
    }
    order++;
    for (String nested : block.nested()) {
      steps.take((long) prelude.length() * nested.length());
      add(unnested(nested, prelude), layer, depth + 1);
    }
  }

  /** A rule inside a rule, written out as CSS Nesting 1 says: {@code &} is the outer selector. */
  private static String unnested(String rule, String outer) {
    int brace = Scan.end(rule, 0, "{");
    if (rule.startsWith("@")) {
      return rule.substring(0, brace) + "{" + outer + rule.substring(brace) + "}";
    }
    String around = ":is(" + outer.strip() + ")";
    String selectors =
        Scan.split(rule.substring(0, brace), ",").stream()
            .map(s -> s.contains("&") ? s.replace("&", around) : around + " " + s)
            .collect(Collectors.joining(","));
    return selectors + rule.substring(brace);
  }
}
