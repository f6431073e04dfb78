package dev.placket.pictures.css;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The places of elements among their siblings, each family counted once. */
final class Siblings {
  private final Map<Node, Place> places = new IdentityHashMap<>();

  /** Places counted from 1, among all siblings and among those of the same type. */
  private record Place(int child, int ofType, int children, int childrenOfType) {}

  /** The place of an element, counted from 1. */
  int place(Element e, boolean last, boolean type) {
    Place place = places.get(e);
    if (place == null) {
      count(e);
      place = places.get(e);
    }
    if (place == null) {
      return 1;
    }
    if (type) {
      return last ? place.childrenOfType - place.ofType + 1 : place.ofType;
    }
    return last ? place.children - place.child + 1 : place.child;
  }

  private void count(Element e) {
    Node first = e;
    for (Node n = e.getPreviousSibling(); n != null; n = n.getPreviousSibling()) {
      first = n;
    }
    Map<String, Integer> types = new HashMap<>();
    int all = 0;
    for (Node n = first; n != null; n = n.getNextSibling()) {
      String type = type(n);
      if (type != null) {
        all++;
        types.merge(type, 1, Integer::sum);
      }
    }
    Map<String, Integer> soFar = new HashMap<>();
    int child = 0;
    for (Node n = first; n != null; n = n.getNextSibling()) {
      String type = type(n);
      if (type != null) {
        child++;
        int ofType = soFar.merge(type, 1, Integer::sum);
        places.put(n, new Place(child, ofType, all, types.getOrDefault(type, 1)));
      }
    }
  }

  private static @Nullable String type(Node n) {
    return n instanceof Element e ? e.getNamespaceURI() + " " + e.getLocalName() : null;
  }
}
