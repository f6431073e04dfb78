package dev.placket.pictures.css;

import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import org.htmlunit.cssparser.dom.Property;
import org.htmlunit.cssparser.parser.CSSException;
import org.htmlunit.cssparser.parser.CSSOMParser;
import org.htmlunit.cssparser.parser.javacc.CSS3Parser;
import org.htmlunit.cssparser.parser.media.MediaQuery;
import org.htmlunit.cssparser.parser.media.MediaQueryList;
import org.htmlunit.cssparser.util.ThrowCssExceptionErrorHandler;
import org.jspecify.annotations.Nullable;

/** Which media queries a printed page answers (Media Queries 4): paper with colours. */
final class PrintMedia {
  private static final Set<String> SIZES =
      Set.of("width", "height", "min-width", "max-width", "min-height", "max-height");

  private @Nullable CSSOMParser parser;
  private final PageSize page;
  private final Notes notes;

  PrintMedia(PageSize page, Notes notes) {
    this.page = page;
    this.notes = notes;
  }

  /** Whether one of a list of queries is answered; an empty list is. */
  boolean answers(String list) {
    if (list.isBlank()) {
      return true;
    }
    boolean any = false;
    for (String query : Scan.split(list, ",")) {
      any |= one(query);
    }
    return any;
  }

  private boolean one(String query) {
    MediaQuery read = read(query);
    if (read == null) {
      unknown(query);
      return false;
    }
    String type = read.getMedia().toLowerCase(Locale.ROOT);
    Boolean holds = type.equals("all") || type.equals("print");
    for (Property feature : read.getProperties()) {
      Boolean one = feature(feature);
      if (one == null) {
        unknown(query);
        return false;
      }
      holds &= one;
    }
    return holds != read.isNot();
  }

  private void unknown(String query) {
    notes.add("the styles for " + Notes.quoted("@media " + query) + " are left out");
  }

  /** The parser passes over what follows a query, so what it cannot know is looked for first. */
  private @Nullable MediaQuery read(String query) {
    String low = query.toLowerCase(Locale.ROOT);
    if (low.contains(" or ") || low.contains("<") || low.contains(">") || low.contains("((")) {
      return null;
    }
    try {
      MediaQueryList list = parser().parseMedia(query);
      return list == null || list.getLength() != 1 ? null : list.getMediaQueries().get(0);
    } catch (IOException | CSSException e) {
      return null;
    }
  }

  private @Nullable Boolean feature(Property feature) {
    String name = feature.getName().toLowerCase(Locale.ROOT);
    String value =
        feature.getValue() == null ? "" : feature.getValue().getCssText().toLowerCase(Locale.ROOT);
    if (SIZES.contains(name)) {
      return size(name, value);
    }
    return switch (name) {
      case "color" -> !value.equals("0");
      case "monochrome", "color-index", "grid" -> value.equals("0");
      case "prefers-color-scheme" -> value.equals("light");
      case "prefers-contrast",
          "prefers-reduced-motion",
          "update",
          "hover",
          "pointer",
          "scripting" ->
          value.equals("none") || value.equals("no-preference");
      case "orientation" -> value.equals(page.height() >= page.width() ? "portrait" : "landscape");
      default -> null;
    };
  }

  private @Nullable Boolean size(String name, String value) {
    double has = name.endsWith("width") ? page.width() : page.height();
    if (value.isEmpty()) {
      return has > 0;
    }
    Double wanted = Lengths.pixels(value);
    if (wanted == null) {
      return null;
    }
    notes.addPlain("the styles for a page's " + name + " are chosen by the drawing's own size");
    if (name.startsWith("min-")) {
      return has >= wanted;
    }
    return name.startsWith("max-") ? has <= wanted : has == wanted;
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
