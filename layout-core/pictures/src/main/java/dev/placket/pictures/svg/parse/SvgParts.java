package dev.placket.pictures.svg.parse;

import dev.placket.pictures.base.PicturePart;
import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Lists what of an SVG can stand as a drawing of its own: its {@code view} elements (SVG 2, 16.3),
 * {@code svg} elements inside it, and the groups at its top, as far as they have names and are not
 * hidden. Read as a stream, so that a drawing which has none of these costs little.
 */
public final class SvgParts {
  /** Groups deeper than this are parts of a drawing, not drawings. */
  private static final int TOP = 4;

  private static final String LABEL = "label";

  private static final Set<String> DRAWN =
      Set.of(
          "path",
          "rect",
          "circle",
          "ellipse",
          "line",
          "polyline",
          "polygon",
          "text",
          "image",
          "use",
          "foreignObject",
          "switch");

  private final Deque<Open> open = new ArrayDeque<>();
  private final List<PicturePart> views = new ArrayList<>();
  private final List<PicturePart> drawings = new ArrayList<>();
  private final List<Group> groups = new ArrayList<>();
  private boolean loose;

  private SvgParts() {}

  /**
   * An element that is open.
   *
   * @param local its name
   * @param group the group that it is; null if it is no named group at the top
   * @param hidden whether it or what it is in is hidden
   */
  private record Open(String local, @Nullable Group group, boolean hidden) {}

  /** A group with its identifier and its name. */
  private static final class Group {
    final String id;
    @Nullable String title;

    Group(String id, @Nullable String title) {
      this.id = id;
      this.title = title;
    }

    PicturePart part() {
      return new PicturePart(PicturePart.Kind.GROUP, id, title);
    }
  }

  /**
   * Lists the parts of a drawing; none of one that is faulty, which is refused where it is read.
   */
  public static SvgParts of(byte[] svg) {
    SvgParts parts = new SvgParts();
    try {
      parts.read(svg);
    } catch (XMLStreamException | RuntimeException e) {
      return new SvgParts();
    }
    return parts;
  }

  /** The parts of one kind: views, else drawings inside it, else groups; or none. */
  public List<PicturePart> parts() {
    if (!views.isEmpty()) {
      return views;
    }
    return drawings.isEmpty() ? groups.stream().map(Group::part).toList() : drawings;
  }

  /** Whether something is drawn outside of the groups at the top. */
  public boolean hasLooseContent() {
    return loose;
  }

  private void read(byte[] svg) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    XMLStreamReader in = factory.createXMLStreamReader(new ByteArrayInputStream(svg));
    while (in.hasNext()) {
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        start(in);
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        open.pop();
      } else if (event == XMLStreamConstants.CHARACTERS) {
        text(in.getText());
      }
    }
  }

  private void start(XMLStreamReader in) {
    String local = in.getLocalName();
    boolean hidden = isHidden(in) || (!open.isEmpty() && open.peek().hidden());
    String id = in.getAttributeValue(null, "id");
    Group group = null;
    if (id != null && !id.isBlank() && SvgParser.SVG.equals(in.getNamespaceURI()) && !hidden) {
      if (local.equals("view") && in.getAttributeValue(null, "viewBox") != null) {
        views.add(new PicturePart(PicturePart.Kind.VIEW, id, name(in)));
      } else if (local.equals("svg") && !open.isEmpty() && onlyGroups()) {
        drawings.add(new PicturePart(PicturePart.Kind.DRAWING, id, name(in)));
      } else if (local.equals("g") && !open.isEmpty() && open.size() < TOP && onlyWrappers()) {
        group = new Group(id, name(in));
        groups.add(group);
      }
    }
    loose |= !hidden && DRAWN.contains(local) && open.stream().allMatch(o -> o.group() == null);
    open.push(new Open(local, group, hidden));
  }

  private boolean onlyGroups() {
    return open.stream().allMatch(o -> o.local().equals("g") || o.local().equals("svg"));
  }

  /** Whether all around is the root and groups that nobody named. */
  private boolean onlyWrappers() {
    return onlyGroups() && open.stream().allMatch(o -> o.group() == null);
  }

  /** The title of a group, where it has no other name. */
  private void text(String text) {
    if (open.size() < 2 || !open.peek().local().equals("title") || text.isBlank()) {
      return;
    }
    open.stream()
        .skip(1)
        .findFirst()
        .map(Open::group)
        .filter(g -> g.title == null)
        .ifPresent(g -> g.title = text.strip());
  }

  private static boolean isHidden(XMLStreamReader in) {
    String style = in.getAttributeValue(null, "style");
    String plain = style == null ? "" : style.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
    return "none".equals(in.getAttributeValue(null, "display"))
        || "hidden".equals(in.getAttributeValue(null, "visibility"))
        || plain.contains("display:none")
        || plain.contains("visibility:hidden")
        || in.getLocalName().equals("defs")
        || in.getLocalName().equals("symbol");
  }

  /** A label of WAI-ARIA, or an attribute of that name which the drawing program adds. */
  private static @Nullable String name(XMLStreamReader in) {
    String name = in.getAttributeValue(null, "aria-label");
    for (int i = 0; name == null && i < in.getAttributeCount(); i++) {
      boolean other = in.getAttributeNamespace(i) != null && !in.getAttributeNamespace(i).isEmpty();
      if (other && in.getAttributeLocalName(i).equals(LABEL)) {
        name = in.getAttributeValue(i);
      }
    }
    return name == null || name.isBlank() ? null : name.strip();
  }
}
