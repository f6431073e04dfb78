package dev.placket.workbooks.parts;

import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** The start of an XML element, valid while it is being visited. */
public final class XmlElement {
  /** The greatest coordinate of a drawing (ISO/IEC 29500-1, 20.1.10.16). */
  private static final long MOST_EMU = 27_273_042_316_900L;

  private final XMLStreamReader reader;
  private final int depth;

  XmlElement(XMLStreamReader reader, int depth) {
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
    try {
      double number = value == null ? absent : Double.parseDouble(value.strip());
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Reported below.
    }
    throw wrong(attribute, value, "number");
  }

  /**
   * A whole number.
   *
   * @throws NumberFormatException if it is none; {@link XmlPart} makes a message of it
   */
  public int whole(String attribute, int absent) {
    String value = get(attribute);
    try {
      return value == null ? absent : Integer.parseInt(value.strip());
    } catch (NumberFormatException e) {
      throw wrong(attribute, value, "whole number of that size");
    }
  }

  /**
   * A length in EMU, kept to what sums of a few can hold.
   *
   * @throws NumberFormatException if it is none; {@link XmlPart} makes a message of it
   */
  public long emu(String attribute) {
    String value = get(attribute);
    try {
      long emu = value == null ? 0 : Long.parseLong(value.strip());
      return Math.max(-MOST_EMU, Math.min(MOST_EMU, emu));
    } catch (NumberFormatException e) {
      throw wrong(attribute, value, "length in whole EMU");
    }
  }

  private NumberFormatException wrong(String attribute, @Nullable String value, String what) {
    return new NumberFormatException(
        "'" + value + "' as " + attribute + " of " + name() + " is no " + what);
  }
}
