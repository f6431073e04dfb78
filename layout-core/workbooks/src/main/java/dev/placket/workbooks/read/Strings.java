package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.Visitor;
import dev.placket.workbooks.parts.XmlElement;
import dev.placket.workbooks.parts.XmlPart;
import java.util.ArrayList;
import java.util.List;

/** Reads the texts that cells share. */
final class Strings implements Visitor {
  private final List<String> strings = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private boolean shows;

  static List<String> read(Parts parts, String part) throws Refusal {
    Strings reader = new Strings();
    if (!part.isEmpty()) {
      XmlPart.walk(parts, part, reader);
    }
    return reader.strings;
  }

  private boolean aside;

  @Override
  public void start(XmlElement e) {
    switch (e.name()) {
      case "si" -> text.setLength(0);
      case "rPh" -> aside = true;
      case "t" -> shows = !aside;
      default -> {
        // Formats of runs.
      }
    }
  }

  @Override
  public void text(String more) {
    if (shows) {
      text.append(more);
    }
  }

  @Override
  public void end(String name) {
    switch (name) {
      case "si" -> strings.add(text.toString());
      case "rPh" -> aside = false;
      case "t" -> shows = false;
      default -> {
        // Formats of runs.
      }
    }
  }
}
