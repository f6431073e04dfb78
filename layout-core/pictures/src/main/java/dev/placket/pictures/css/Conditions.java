package dev.placket.pictures.css;

import java.util.List;
import org.htmlunit.cssparser.parser.condition.Condition;
import org.htmlunit.cssparser.parser.selector.ElementSelector;

/** The conditions of a simple selector, of which the parser has null where there are none. */
final class Conditions {
  private Conditions() {}

  static List<Condition> of(ElementSelector selector) {
    List<Condition> conditions = selector.getConditions();
    return conditions == null ? List.of() : conditions;
  }
}
