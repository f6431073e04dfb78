package dev.placket.packs.description;

import java.util.HashMap;
import java.util.Map;

/** Where each part of a description stands, so that later checks can point at it. */
public final class Places {
  private final Map<String, TextPosition> marks = new HashMap<>();

  private Places() {}

  static Places of(PackNode root) {
    Places places = new Places();
    places.add("", root);
    return places;
  }

  /** For a pack that was built by a program: everything stands at the start. */
  public static Places none() {
    return new Places();
  }

  /**
   * The place of a part, or of the nearest part that holds it.
   *
   * @param path keys and, in lists, numbers from 0, joined by slashes
   */
  public TextPosition of(String path) {
    String at = path;
    while (!marks.containsKey(at) && !at.isEmpty()) {
      at = at.substring(0, Math.max(0, at.lastIndexOf('/')));
    }
    return marks.getOrDefault(at, TextPosition.START);
  }

  /** These places with another path for a part and all in it. */
  public Places also(String path, String same) {
    Places more = new Places();
    more.marks.putAll(marks);
    marks.forEach(
        (at, mark) -> {
          if (at.equals(same) || at.startsWith(same + "/")) {
            more.marks.put(path + at.substring(same.length()), mark);
          }
        });
    return more;
  }

  private void add(String path, PackNode node) {
    marks.put(path, node.mark());
    if (node instanceof PackNode.Items list) {
      for (int i = 0; i < list.items().size(); i++) {
        add(joined(path, "" + i), list.items().get(i));
      }
    } else if (node instanceof PackNode.Keys keys) {
      keys.values()
          .forEach(
              (key, value) -> {
                add(joined(path, key), value);
                boolean block = value instanceof PackNode.Keys || value instanceof PackNode.Items;
                if (block) {
                  marks.put(joined(path, key), keys.places().getOrDefault(key, value.mark()));
                }
              });
    }
  }

  private static String joined(String path, String key) {
    return path.isEmpty() ? key : path + "/" + key;
  }
}
