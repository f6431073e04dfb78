package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.htmlunit.cssparser.parser.condition.Condition;
import org.htmlunit.cssparser.parser.selector.ElementSelector;
import org.htmlunit.cssparser.parser.selector.Selector;
import org.w3c.dom.Element;

/** Which declarations hold for an element, of all that are stated for it (Cascade 5, clause 6). */
final class Cascade {
  private final Map<String, List<StyleRule>> byKey = new HashMap<>();
  private final Map<String, List<Declaration>> inline = new HashMap<>();
  private final Map<String, Integer> layers;
  private final Declarations declarations;
  private final SelectorMatcher matcher;

  Cascade(
      List<StyleRule> rules,
      Map<String, Integer> layers,
      Declarations declarations,
      WorkBudget steps) {
    this.layers = layers;
    this.declarations = declarations;
    this.matcher = new SelectorMatcher(steps);
    for (StyleRule rule : rules) {
      // What a sheet adds, such as ::before, is no element; it is noted where the sheet is read.
      if (!Selectors.isGenerated(rule.selector())) {
        byKey.computeIfAbsent(key(rule.selector()), k -> new ArrayList<>()).add(rule);
      }
    }
  }

  /** What an element must have for a selector to be worth a test. */
  private static String key(Selector selector) {
    if (!(selector instanceof ElementSelector)) {
      // A pseudo-element is its own simple selector.
      Selector last = selector.getSimpleSelector();
      return last == null || last == selector ? "*" : key(last);
    }
    ElementSelector element = (ElementSelector) selector;
    String key = element.getLocalName() == null ? "*" : element.getLocalName();
    for (Condition c : Conditions.of(element)) {
      switch (c.getConditionType()) {
        case ID_CONDITION -> {
          return "#" + c.getValue();
        }
        case CLASS_CONDITION -> key = "." + c.getValue();
        default -> {
          // Says nothing that is looked up.
        }
      }
    }
    return key;
  }

  /** Values by property; what was stated with more weight stands later. */
  Map<String, String> of(Element e) throws TooManySteps {
    List<StyleRule> rules = matching(e);
    List<Declaration> own = own(e);
    Map<String, String> holds = new LinkedHashMap<>();
    rules.sort(byWeight(1));
    rules.forEach(rule -> put(holds, rule.declarations(), false));
    put(holds, own, false);
    if (rules.stream()
            .anyMatch(rule -> rule.declarations().stream().anyMatch(Declaration::important))
        || own.stream().anyMatch(Declaration::important)) {
      // What is important in a weak layer outweighs what is important in a strong one.
      rules.sort(byWeight(-1));
      rules.forEach(rule -> put(holds, rule.declarations(), true));
      put(holds, own, true);
    }
    return holds;
  }

  private Comparator<StyleRule> byWeight(int layerOrder) {
    return Comparator.<StyleRule>comparingInt(r -> layerOrder * layers.getOrDefault(r.layer(), 0))
        .thenComparing(StyleRule::specificity)
        .thenComparingInt(StyleRule::order);
  }

  private static void put(Map<String, String> holds, List<Declaration> list, boolean important) {
    for (Declaration d : list) {
      if (d.important() == important) {
        holds.remove(d.name());
        holds.put(d.name(), d.value());
      }
    }
  }

  private List<StyleRule> matching(Element e) throws TooManySteps {
    List<StyleRule> rules = new ArrayList<>();
    if (byKey.isEmpty()) {
      return rules;
    }
    addMatching("*", e, rules);
    addMatching(e.getLocalName(), e, rules);
    String id = e.getAttribute("id");
    if (!id.isEmpty()) {
      addMatching("#" + id, e, rules);
    }
    String classes = e.getAttribute("class").strip();
    if (!classes.isEmpty()) {
      for (String word : List.of(classes.split("\\s+"))) {
        addMatching("." + word, e, rules);
      }
    }
    return rules;
  }

  private void addMatching(String key, Element e, List<StyleRule> rules) throws TooManySteps {
    for (StyleRule rule : byKey.getOrDefault(key, List.of())) {
      if (matcher.matches(rule.selector(), e)) {
        rules.add(rule);
      }
    }
  }

  private List<Declaration> own(Element e) {
    String style = e.getAttribute("style");
    if (style.isBlank()) {
      return List.of();
    }
    return inline.computeIfAbsent(style, declarations::ofAttribute);
  }
}
