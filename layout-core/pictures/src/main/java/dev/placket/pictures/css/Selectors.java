package dev.placket.pictures.css;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.htmlunit.cssparser.parser.CSSException;
import org.htmlunit.cssparser.parser.CSSOMParser;
import org.htmlunit.cssparser.parser.condition.Condition;
import org.htmlunit.cssparser.parser.condition.IsPseudoClassCondition;
import org.htmlunit.cssparser.parser.condition.NotPseudoClassCondition;
import org.htmlunit.cssparser.parser.condition.WherePseudoClassCondition;
import org.htmlunit.cssparser.parser.javacc.CSS3Parser;
import org.htmlunit.cssparser.parser.selector.ChildSelector;
import org.htmlunit.cssparser.parser.selector.DescendantSelector;
import org.htmlunit.cssparser.parser.selector.DirectAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.ElementSelector;
import org.htmlunit.cssparser.parser.selector.GeneralAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.PseudoElementSelector;
import org.htmlunit.cssparser.parser.selector.Selector;
import org.htmlunit.cssparser.parser.selector.SelectorList;
import org.htmlunit.cssparser.util.ThrowCssExceptionErrorHandler;
import org.jspecify.annotations.Nullable;

/** Reads selectors, one at a time, so that the fault of one costs its rule alone. */
final class Selectors {
  /** A selector longer than this is nonsense, and would nest deep. */
  private static final int LONGEST = 2000;

  private static final Set<String> STRUCTURE =
      Set.of(
          "root",
          "empty",
          "first-child",
          "last-child",
          "only-child",
          "first-of-type",
          "last-of-type",
          "only-of-type");

  /** Pseudo-classes of a reader's doing, which no print has. */
  private static final Set<String> NEVER =
      Set.of(
          "hover",
          "active",
          "focus",
          "focus-visible",
          "focus-within",
          "visited",
          "target",
          "enabled",
          "disabled",
          "checked",
          "link",
          "any-link");

  private @Nullable CSSOMParser parser;

  /** The selectors of a list, or null if one of them is not understood. */
  @Nullable List<Selector> read(String list) {
    List<Selector> all = new ArrayList<>();
    for (String one : Scan.split(list, ",")) {
      Selector read = one.length() > LONGEST ? null : readOne(one);
      if (read == null || !isKnown(read)) {
        return null;
      }
      all.add(read);
    }
    return all;
  }

  private @Nullable Selector readOne(String text) {
    try {
      SelectorList list = parser().parseSelectors(text);
      return list == null || list.size() != 1 ? null : list.get(0);
    } catch (IOException | CSSException e) {
      return null;
    }
  }

  /** Whether a selector means something that a style sheet adds, such as {@code ::before}. */
  static boolean isGenerated(Selector selector) {
    return selector instanceof PseudoElementSelector
        || (!(selector instanceof ElementSelector)
            && selector.getSimpleSelector() instanceof PseudoElementSelector);
  }

  private static boolean isKnown(Selector selector) {
    if (selector instanceof DescendantSelector s) {
      return isKnown(s.getAncestorSelector()) && isKnown(s.getSimpleSelector());
    }
    if (selector instanceof ChildSelector s) {
      return isKnown(s.getAncestorSelector()) && isKnown(s.getSimpleSelector());
    }
    if (selector instanceof DirectAdjacentSelector s) {
      return isKnown(s.getSelector()) && isKnown(s.getSimpleSelector());
    }
    if (selector instanceof GeneralAdjacentSelector s) {
      return isKnown(s.getSelector()) && isKnown(s.getSimpleSelector());
    }
    return !(selector instanceof ElementSelector element)
        || Conditions.of(element).stream().allMatch(Selectors::isKnown);
  }

  private static boolean isKnown(Condition condition) {
    return switch (condition.getConditionType()) {
      case PSEUDO_CLASS_CONDITION -> {
        String name = condition.getValue().toLowerCase(Locale.ROOT);
        yield STRUCTURE.contains(name) || NEVER.contains(name) || Nth.of(name) != null;
      }
      case HAS_PSEUDO_CLASS_CONDITION -> false;
      case NOT_PSEUDO_CLASS_CONDITION ->
          ((NotPseudoClassCondition) condition)
              .getSelectors().stream().allMatch(Selectors::isKnown);
      case IS_PSEUDO_CLASS_CONDITION ->
          ((IsPseudoClassCondition) condition).getSelectors().stream().allMatch(Selectors::isKnown);
      case WHERE_PSEUDO_CLASS_CONDITION ->
          ((WherePseudoClassCondition) condition)
              .getSelectors().stream().allMatch(Selectors::isKnown);
      default -> true;
    };
  }

  /** Made when it is first needed, since most drawings have no style sheets. */
  private CSSOMParser parser() {
    CSSOMParser made = parser;
    if (made == null) {
      made = new CSSOMParser(new CSS3Parser());
      made.setErrorHandler(ThrowCssExceptionErrorHandler.INSTANCE);
      parser = made;
    }
    return made;
  }
}
