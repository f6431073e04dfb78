package dev.placket.pictures.svg.rewrite;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.w3c.dom.Element;

/** All rewritings in their order. */
public final class Rewritings {
  private static final List<Rewriting> ALL =
      List.of(
          new WrappedViewports(),
          new Transforms(),
          new InheritedColour(),
          new Gradients(),
          new MarkedShapes(),
          new Markers(),
          new PathForms(),
          new TextPlaces(),
          new TextRules(),
          new TextPaintOrder(),
          new EngineStyles());

  private Rewritings() {}

  /**
   * Rewrites a document in place.
   *
   * @return what could not be brought into a right form, each once, in a designer's words
   */
  public static List<String> apply(Element root) {
    List<String> notes = new ArrayList<>();
    ALL.forEach(r -> r.rewrite(root, notes));
    return List.copyOf(new LinkedHashSet<>(notes));
  }
}
