package dev.placket.pictures.css;

import java.util.List;
import org.htmlunit.cssparser.parser.condition.Condition;
import org.htmlunit.cssparser.parser.condition.IsPseudoClassCondition;
import org.htmlunit.cssparser.parser.condition.NotPseudoClassCondition;
import org.htmlunit.cssparser.parser.selector.ChildSelector;
import org.htmlunit.cssparser.parser.selector.DescendantSelector;
import org.htmlunit.cssparser.parser.selector.DirectAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.ElementSelector;
import org.htmlunit.cssparser.parser.selector.GeneralAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.PseudoElementSelector;
import org.htmlunit.cssparser.parser.selector.Selector;

/**
 * How much a selector outweighs others: ids, then classes, attributes and pseudo-classes, then
 * types (Selectors 4, clause 17). The parser's own reckoning adds up what stands in {@code :not()}.
 */
record Specificity(int ids, int classes, int types) implements Comparable<Specificity> {
  static final Specificity NONE = new Specificity(0, 0, 0);

  static Specificity of(Selector selector) {
    if (selector instanceof DescendantSelector s) {
      return of(s.getAncestorSelector()).plus(of(s.getSimpleSelector()));
    }
    if (selector instanceof ChildSelector s) {
      return of(s.getAncestorSelector()).plus(of(s.getSimpleSelector()));
    }
    if (selector instanceof DirectAdjacentSelector s) {
      return of(s.getSelector()).plus(of(s.getSimpleSelector()));
    }
    if (selector instanceof GeneralAdjacentSelector s) {
      return of(s.getSelector()).plus(of(s.getSimpleSelector()));
    }
    if (selector instanceof PseudoElementSelector) {
      return new Specificity(0, 0, 1);
    }
    if (!(selector instanceof ElementSelector element)) {
      return NONE;
    }
    Specificity sum = element.getLocalName() == null ? NONE : new Specificity(0, 0, 1);
    for (Condition condition : Conditions.of(element)) {
      sum = sum.plus(of(condition));
    }
    return sum;
  }

  private static Specificity of(Condition condition) {
    return switch (condition.getConditionType()) {
      case ID_CONDITION -> new Specificity(1, 0, 0);
      case NOT_PSEUDO_CLASS_CONDITION ->
          highest(((NotPseudoClassCondition) condition).getSelectors());
      case IS_PSEUDO_CLASS_CONDITION ->
          highest(((IsPseudoClassCondition) condition).getSelectors());
      case WHERE_PSEUDO_CLASS_CONDITION -> NONE;
      default -> new Specificity(0, 1, 0);
    };
  }

  private static Specificity highest(List<Selector> selectors) {
    return selectors.stream().map(Specificity::of).max(Specificity::compareTo).orElse(NONE);
  }

  private Specificity plus(Specificity other) {
    return new Specificity(ids + other.ids, classes + other.classes, types + other.types);
  }

  @Override
  public int compareTo(Specificity other) {
    if (ids != other.ids) {
      return Integer.compare(ids, other.ids);
    }
    return classes != other.classes
        ? Integer.compare(classes, other.classes)
        : Integer.compare(types, other.types);
  }
}
