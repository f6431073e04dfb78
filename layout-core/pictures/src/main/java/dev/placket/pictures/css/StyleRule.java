package dev.placket.pictures.css;

import java.util.List;
import org.htmlunit.cssparser.parser.selector.Selector;

/**
 * A rule of a style sheet that applies in print, with one of its selectors.
 *
 * @param layer the full name of its layer; "" if it is in none
 * @param order of later rules the number is higher
 */
record StyleRule(
    Selector selector,
    Specificity specificity,
    String layer,
    int order,
    List<Declaration> declarations) {}
