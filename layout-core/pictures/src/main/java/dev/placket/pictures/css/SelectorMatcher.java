package dev.placket.pictures.css;

import java.util.List;
import java.util.Locale;
import org.htmlunit.cssparser.parser.condition.AttributeCondition;
import org.htmlunit.cssparser.parser.condition.Condition;
import org.htmlunit.cssparser.parser.condition.IsPseudoClassCondition;
import org.htmlunit.cssparser.parser.condition.NotPseudoClassCondition;
import org.htmlunit.cssparser.parser.condition.WherePseudoClassCondition;
import org.htmlunit.cssparser.parser.selector.ChildSelector;
import org.htmlunit.cssparser.parser.selector.DescendantSelector;
import org.htmlunit.cssparser.parser.selector.DirectAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.ElementSelector;
import org.htmlunit.cssparser.parser.selector.GeneralAdjacentSelector;
import org.htmlunit.cssparser.parser.selector.Selector;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Whether elements are what selectors ask for (Selectors 4), from right to left. */
final class SelectorMatcher {
  private final WorkBudget steps;
  private final Siblings siblings = new Siblings();

  SelectorMatcher(WorkBudget steps) {
    this.steps = steps;
  }

  boolean matches(Selector selector, Element e) throws TooManySteps {
    steps.take(1);
    if (selector instanceof ElementSelector element) {
      return simple(element, e);
    }
    if (selector instanceof DescendantSelector s) {
      return matches(s.getSimpleSelector(), e) && within(s.getAncestorSelector(), e);
    }
    if (selector instanceof ChildSelector s) {
      return matches(s.getSimpleSelector(), e)
          && e.getParentNode() instanceof Element parent
          && matches(s.getAncestorSelector(), parent);
    }
    if (selector instanceof DirectAdjacentSelector s) {
      Element before = matches(s.getSimpleSelector(), e) ? before(e) : null;
      return before != null && matches(s.getSelector(), before);
    }
    if (selector instanceof GeneralAdjacentSelector s) {
      return matches(s.getSimpleSelector(), e) && after(s.getSelector(), e);
    }
    // A pseudo-element is no element.
    return false;
  }

  private boolean within(Selector ancestor, Element e) throws TooManySteps {
    for (Node n = e.getParentNode(); n instanceof Element parent; n = n.getParentNode()) {
      if (matches(ancestor, parent)) {
        return true;
      }
    }
    return false;
  }

  private boolean after(Selector sibling, Element e) throws TooManySteps {
    for (Element b = before(e); b != null; b = before(b)) {
      if (matches(sibling, b)) {
        return true;
      }
    }
    return false;
  }

  private static @Nullable Element before(Element e) {
    Node n = e.getPreviousSibling();
    while (n != null && !(n instanceof Element)) {
      n = n.getPreviousSibling();
    }
    return (Element) n;
  }

  private boolean simple(ElementSelector selector, Element e) throws TooManySteps {
    String type = selector.getLocalName();
    if (type != null && !type.equals(e.getLocalName())) {
      return false;
    }
    for (Condition condition : Conditions.of(selector)) {
      steps.take(1);
      if (!is(condition, e)) {
        return false;
      }
    }
    return true;
  }

  private boolean is(Condition condition, Element e) throws TooManySteps {
    return switch (condition.getConditionType()) {
      case ID_CONDITION -> e.getAttribute("id").equals(condition.getValue());
      case CLASS_CONDITION -> hasWord(e.getAttribute("class"), condition.getValue());
      case PSEUDO_CLASS_CONDITION -> pseudo(condition.getValue().toLowerCase(Locale.ROOT), e);
      case LANG_CONDITION -> isIn(String.valueOf(condition.getValue()), e);
      case NOT_PSEUDO_CLASS_CONDITION ->
          !any(((NotPseudoClassCondition) condition).getSelectors(), e);
      case IS_PSEUDO_CLASS_CONDITION -> any(((IsPseudoClassCondition) condition).getSelectors(), e);
      case WHERE_PSEUDO_CLASS_CONDITION ->
          any(((WherePseudoClassCondition) condition).getSelectors(), e);
      case HAS_PSEUDO_CLASS_CONDITION -> false;
      default -> condition instanceof AttributeCondition a && attribute(a, e);
    };
  }

  private boolean any(List<Selector> selectors, Element e) throws TooManySteps {
    for (Selector s : selectors) {
      if (matches(s, e)) {
        return true;
      }
    }
    return false;
  }

  private static boolean attribute(AttributeCondition condition, Element e) {
    String name = condition.getLocalName();
    if (!e.hasAttributeNS(null, name)) {
      return false;
    }
    String wanted = condition.getValue();
    if (wanted == null) {
      return true;
    }
    String has = e.getAttributeNS(null, name);
    if (condition.isCaseInSensitive()) {
      has = has.toLowerCase(Locale.ROOT);
      wanted = wanted.toLowerCase(Locale.ROOT);
    }
    return switch (condition.getConditionType()) {
      case ONE_OF_ATTRIBUTE_CONDITION -> hasWord(has, wanted);
      case BEGIN_HYPHEN_ATTRIBUTE_CONDITION -> has.equals(wanted) || has.startsWith(wanted + "-");
      case PREFIX_ATTRIBUTE_CONDITION -> !wanted.isEmpty() && has.startsWith(wanted);
      case SUFFIX_ATTRIBUTE_CONDITION -> !wanted.isEmpty() && has.endsWith(wanted);
      case SUBSTRING_ATTRIBUTE_CONDITION -> !wanted.isEmpty() && has.contains(wanted);
      default -> has.equals(wanted);
    };
  }

  static boolean hasWord(String list, String word) {
    int i = list.indexOf(word);
    while (i >= 0 && !word.isEmpty()) {
      int end = i + word.length();
      boolean starts = i == 0 || Character.isWhitespace(list.charAt(i - 1));
      if (starts && (end == list.length() || Character.isWhitespace(list.charAt(end)))) {
        return true;
      }
      i = list.indexOf(word, i + 1);
    }
    return false;
  }

  private static boolean isIn(String language, Element e) {
    for (Node n = e; n instanceof Element at; n = n.getParentNode()) {
      String lang = at.getAttributeNS("http://www.w3.org/XML/1998/namespace", "lang");
      lang = lang.isEmpty() ? at.getAttributeNS(null, "lang") : lang;
      if (!lang.isEmpty()) {
        String low = lang.toLowerCase(Locale.ROOT);
        String wanted = language.toLowerCase(Locale.ROOT);
        return low.equals(wanted) || low.startsWith(wanted + "-");
      }
    }
    return false;
  }

  private boolean pseudo(String name, Element e) {
    return switch (name) {
      case "root" -> e == e.getOwnerDocument().getDocumentElement();
      case "empty" -> isEmpty(e);
      case "first-child" -> siblings.place(e, false, false) == 1;
      case "last-child" -> siblings.place(e, true, false) == 1;
      case "only-child" ->
          siblings.place(e, false, false) == 1 && siblings.place(e, true, false) == 1;
      case "first-of-type" -> siblings.place(e, false, true) == 1;
      case "last-of-type" -> siblings.place(e, true, true) == 1;
      case "only-of-type" ->
          siblings.place(e, false, true) == 1 && siblings.place(e, true, true) == 1;
      default -> {
        Nth nth = Nth.of(name);
        yield nth != null && nth.has(siblings.place(e, nth.last(), nth.type()));
      }
    };
  }

  private static boolean isEmpty(Element e) {
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      String text = n.getNodeValue();
      if (n instanceof Element || (text != null && !text.isEmpty())) {
        return false;
      }
    }
    return true;
  }
}
