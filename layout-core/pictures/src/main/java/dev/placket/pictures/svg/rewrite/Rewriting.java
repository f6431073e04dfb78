package dev.placket.pictures.svg.rewrite;

import java.util.List;
import org.w3c.dom.Element;

/** One kind of form and what it becomes. */
interface Rewriting {
  /**
   * Rewrites whatever it knows below and including the root.
   *
   * @param notes takes a clause for each thing that keeps its wrong form, in a designer's words
   */
  void rewrite(Element root, List<String> notes);
}
