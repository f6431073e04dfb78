package dev.placket.pictures.svg;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Finds the line of the list that decides for each thing set on an element. */
final class DrawnLookup {
  private final DrawnList list;
  private final Noted noted;

  DrawnLookup(DrawnList list, Noted noted) {
    this.list = list;
    this.noted = noted;
  }

  /** Notes whatever is set on an element, or inherited by it, and not drawn right. */
  void check(Element e, ElementProperties given) {
    given
        .all()
        .forEach(
            (name, value) -> {
              if (!quiet(name)) {
                check(e, given, name, value);
              }
            });
  }

  /** Names that no renderer draws by: of programs, of scripts, of readers. */
  private static boolean quiet(String name) {
    return name.startsWith("-") || name.startsWith("data-") || name.startsWith("aria-");
  }

  private void check(Element e, ElementProperties given, String name, String value) {
    List<Entry> lines = lines(e, given, name);
    if (!lines.isEmpty() && !applies(lines, e.getLocalName())) {
      return;
    }
    Entry found = decides(lines, e.getLocalName(), value, given);
    if (found == null) {
      noted.add(text(lines.isEmpty() ? "name" : "value", name, value), e);
    } else if (!found.right()) {
      noted.add(text(found.verdict(), name, value), e);
    }
  }

  /** The line that decides for what is set on an element, or null if none does. */
  @Nullable Entry decides(Element e, ElementProperties given, String name) {
    return decides(lines(e, given, name), e.getLocalName(), given.value(name), given);
  }

  private List<Entry> lines(Element e, ElementProperties given, String name) {
    List<Entry> styled = given.styled().contains(name) ? list.of("style:" + name) : List.of();
    return applies(styled, e.getLocalName()) ? styled : list.of(name);
  }

  private static boolean applies(List<Entry> lines, String element) {
    return lines.stream().anyMatch(l -> l.elements().contains(element));
  }

  private static @Nullable Entry decides(
      List<Entry> lines, String element, String value, ElementProperties given) {
    for (Entry line : lines) {
      if (line.elements().contains(element)
          && line.values().matches(value)
          && (line.besides() == null || set(given.value(line.besides())))) {
        return line;
      }
    }
    return null;
  }

  private static boolean set(String value) {
    return !value.isEmpty() && !value.equalsIgnoreCase("none");
  }

  private String text(String key, String name, String value) {
    return list.note(key)
        .replace("{name}", Noted.shortened(name))
        .replace("{value}", Noted.shortened(value));
  }
}
