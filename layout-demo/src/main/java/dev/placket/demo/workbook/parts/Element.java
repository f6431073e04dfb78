package dev.placket.demo.workbook.parts;

import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** The start of an XML element, valid while it is being visited. */
public final class Element {
  private final XMLStreamReader reader;
  private final int depth;

  Element(XMLStreamReader reader, int depth) {
    this.reader = reader;
    this.depth = depth;
  }

  /** Its name without prefix. */
  public String name() {
    return reader.getLocalName();
  }

  /** Its namespace, empty for none. */
  public String namespace() {
    String ns = reader.getNamespaceURI();
    return ns == null ? "" : ns;
  }

  /** How many elements it lies in: 0 for the root. */
  public int depth() {
    return depth;
  }

  /** An attribute without namespace, null where it is absent. */
  public @Nullable String get(String attribute) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String ns = reader.getAttributeNamespace(i);
      if (reader.getAttributeLocalName(i).equals(attribute) && (ns == null || ns.isEmpty())) {
        return reader.getAttributeValue(i);
      }
    }
    return null;
  }

  /** An attribute of the namespaces for relations, null where it is absent. */
  public @Nullable String relation(String attribute) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String ns = reader.getAttributeNamespace(i);
      boolean relations = ns != null && ns.endsWith("/relationships");
      if (relations && reader.getAttributeLocalName(i).equals(attribute)) {
        return reader.getAttributeValue(i);
      }
    }
    return null;
  }

  /** An attribute, or what holds where it is absent. */
  public String get(String attribute, String absent) {
    String value = get(attribute);
    return value == null ? absent : value;
  }

  /** Whether an attribute is on; what holds where it is absent. */
  public boolean flag(String attribute, boolean absent) {
    String value = get(attribute);
    return value == null ? absent : value.equals("1") || value.equals("true");
  }

  /**
   * A number.
   *
   * @throws NumberFormatException if it is none; {@link XmlPart} makes a message of it
   */
  public double number(String attribute, double absent) {
    String value = get(attribute);
    double number = value == null ? absent : Double.parseDouble(value.strip());
    if (!Double.isFinite(number)) {
      throw new NumberFormatException(value);
    }
    return number;
  }

  /**
   * A whole number.
   *
   * @throws NumberFormatException if it is none; {@link XmlPart} makes a message of it
   */
  public int whole(String attribute, int absent) {
    String value = get(attribute);
    return value == null ? absent : Integer.parseInt(value.strip());
  }
}
