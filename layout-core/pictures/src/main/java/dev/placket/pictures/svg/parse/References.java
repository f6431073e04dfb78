package dev.placket.pictures.svg.parse;

import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.fault.ErrorText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Rewrites references to what is missing, or of the wrong kind, into what SVG 2 draws for them, and
 * takes out filters, which are not drawn: Batik refuses the whole drawing over either.
 */
public final class References {
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final int NAMED = 5;
  private static final Pattern DECLARED =
      Pattern.compile(
          "(?<![\\w.#-])(fill|stroke|clip-path|mask|filter|marker(?:-(?:start|mid|end))?"
              + "|enable-background)(\\s*:\\s*)([^;{}]*)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern LOCAL =
      Pattern.compile(
          "url\\(\\s*(['\"]?)#([^'\")]*?)\\1\\s*\\)(.*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private final Map<String, Element> byId = new HashMap<>();
  private final Set<String> doubled = new HashSet<>();
  private final Map<String, Set<String>> notes = new LinkedHashMap<>();
  private final Set<String> ambiguous = new LinkedHashSet<>();
  private boolean filtered;

  private References() {}

  /** Rewrites a document; the notes say what was missing, by id. */
  public static List<PictureNote> mend(Element root) {
    References r = new References();
    r.collect(root);
    r.mendAll(root);
    return r.told();
  }

  private void collect(Element e) {
    String id = e.getAttribute("id");
    if (!id.isEmpty() && byId.putIfAbsent(id, e) != null) {
      doubled.add(id);
    }
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        collect(child);
      }
    }
  }

  private void mendAll(Element e) {
    if (e.getLocalName().equals("style")) {
      e.setTextContent(declarations(e.getTextContent()));
      return;
    }
    NamedNodeMap attributes = e.getAttributes();
    for (int i = attributes.getLength() - 1; i >= 0; i--) {
      Attr a = (Attr) attributes.item(i);
      if (a.getNamespaceURI() == null && a.getName().equals("enable-background")) {
        e.removeAttributeNS(null, a.getName());
      } else if (a.getNamespaceURI() == null && a.getName().equals("style")) {
        a.setValue(declarations(a.getValue()));
      } else if (a.getNamespaceURI() == null) {
        String mended = mended(a.getName(), a.getValue());
        if (mended != null) {
          a.setValue(mended);
        }
      }
    }
    Node next;
    for (Node n = e.getFirstChild(); n != null; n = next) {
      next = n.getNextSibling();
      if (n instanceof Element child) {
        if (child.getLocalName().equals("filter")) {
          e.removeChild(child);
        } else if (href(child)) {
          mendAll(child);
        } else {
          // An empty group keeps the id, for whatever refers to it.
          Element empty = child.getOwnerDocument().createElementNS(SvgParser.SVG, "g");
          if (!child.getAttribute("id").isEmpty()) {
            empty.setAttributeNS(null, "id", child.getAttribute("id"));
          }
          e.insertBefore(empty, child);
          e.removeChild(child);
        }
      }
    }
  }

  /** Whether an element is drawn: one that draws only what it refers to is not, without that. */
  private boolean href(Element e) {
    ReferenceKind kind = ReferenceKind.ofElement(e.getLocalName());
    if (kind == null) {
      return true;
    }
    boolean draws = !kind.otherwise().startsWith("its own");
    String to = e.getAttributeNS(XLINK, "href").strip();
    if (to.isEmpty()) {
      e.removeAttributeNS(XLINK, "href");
      return !draws;
    }
    if (isThere(kind, to.substring(1))) {
      return true;
    }
    e.removeAttributeNS(XLINK, "href");
    e.removeAttributeNS(null, "href");
    return !draws;
  }

  private String declarations(String css) {
    Matcher m = DECLARED.matcher(css);
    StringBuilder out = new StringBuilder();
    while (m.find()) {
      String property = m.group(1).toLowerCase(Locale.ROOT);
      String mended = property.startsWith("enable") ? "accumulate" : mended(property, m.group(3));
      String value = mended == null ? m.group(3) : mended;
      m.appendReplacement(out, Matcher.quoteReplacement(m.group(1) + m.group(2) + value));
    }
    return m.appendTail(out).toString();
  }

  /** The value to take the place of another, or null if it may stay. */
  private @Nullable String mended(String property, String value) {
    ReferenceKind kind = ReferenceKind.ofProperty(property);
    if (kind == null || value.indexOf('(') < 0) {
      return null;
    }
    Matcher m = LOCAL.matcher(value.strip());
    boolean there = !m.matches() || isThere(kind, m.group(2));
    if (property.equals("filter")) {
      filtered |= there;
      return "none" + important(value);
    }
    if (there) {
      return null;
    }
    String beside = m.group(3).replaceAll("(?i)!\\s*important", "").strip();
    boolean paint = property.equals("fill") || property.equals("stroke");
    return (paint && !beside.isEmpty() ? beside : "none") + important(value);
  }

  private static String important(String value) {
    return value.toLowerCase(Locale.ROOT).contains("!") ? " !important" : "";
  }

  private boolean isThere(ReferenceKind kind, String id) {
    Element target = byId.get(id);
    if (target != null && kind.targets().contains(target.getLocalName())) {
      if (doubled.contains(id)) {
        ambiguous.add(id);
      }
      return true;
    }
    String found =
        target == null
            ? "is not in the drawing"
            : "is a <" + target.getLocalName() + ">, not a " + kind.word();
    notes
        .computeIfAbsent(
            "the " + kind.word() + " %s that it refers to " + found + ": " + kind.otherwise(),
            k -> new LinkedHashSet<>())
        .add(id);
    return false;
  }

  private List<PictureNote> told() {
    List<PictureNote> all = new ArrayList<>();
    notes.forEach((text, ids) -> all.add(PictureNote.plain(text.replace("%s", named(ids)))));
    if (!ambiguous.isEmpty()) {
      all.add(
          PictureNote.plain(
              "the id " + named(ambiguous) + " is given more than once: the first one counts"));
    }
    if (filtered) {
      all.add(PictureNote.changed("filter effects are left out; flatten them before export"));
    }
    return all;
  }

  private static String named(Set<String> ids) {
    String few =
        ids.stream()
            .limit(NAMED)
            .map(id -> "'" + ErrorText.line(id) + "'")
            .collect(Collectors.joining(", "));
    return ids.size() > NAMED ? few + " and " + (ids.size() - NAMED) + " more" : few;
  }
}
