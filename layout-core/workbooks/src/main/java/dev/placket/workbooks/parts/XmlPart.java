package dev.placket.workbooks.parts;

import dev.placket.packs.refusal.Refusal;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Walks through the XML of a part. A document type or an entity is refused unread, so nothing is
 * fetched and nothing is expanded; ISO/IEC 29500-2 allows neither in a package.
 */
public final class XmlPart {
  /** A document type, as found in a part. */
  static final String DOCUMENT_TYPE =
      "has a document type (DOCTYPE), which ISO/IEC 29500-2 does not allow";

  /** What helps against one. */
  static final String SAVE_AGAIN = "open the workbook in a spreadsheet program and save it again";

  private static final XMLInputFactory FACTORY = factory();

  private XmlPart() {}

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("reaches outside the workbook");
        });
    return factory;
  }

  /**
   * Visits a part from start to end.
   *
   * @throws Refusal naming part and line, if it is damaged or asks for too much
   */
  public static void walk(Parts parts, String name, Visitor visitor) throws Refusal {
    walk(PartLabel.of(parts, name), parts.bytes(name), parts.limits(), visitor);
  }

  /**
   * Visits XML from start to end.
   *
   * @param what what messages call it
   * @throws Refusal as {@link #walk(Parts, String, Visitor)}
   */
  public static void walk(PartLabel what, byte[] xml, WorkbookLimits limits, Visitor visitor)
      throws Refusal {
    try {
      XMLStreamReader reader = reader(new ByteArrayInputStream(xml));
      try {
        walk(what, reader, limits, visitor);
      } catch (IllegalArgumentException e) {
        throw damaged(what, reader, "a value is wrong: " + e.getMessage());
      } finally {
        reader.close();
      }
    } catch (XMLStreamException e) {
      String[] lines = String.valueOf(e.getMessage()).split("\\R");
      throw Refusal.input(
          what.fault("is damaged (" + lines[lines.length - 1].strip() + ")")
              .remedy("save the workbook again"));
    }
  }

  /** Reads XML without document types or entities; either is an event. */
  static XMLStreamReader reader(InputStream in) throws XMLStreamException {
    return FACTORY.createXMLStreamReader(in);
  }

  private static void walk(
      PartLabel what, XMLStreamReader reader, WorkbookLimits limits, Visitor visitor)
      throws XMLStreamException, Refusal {
    int depth = 0;
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          if (depth >= limits.depth()) {
            throw damaged(what, reader, "elements lie more than " + limits.depth() + " deep");
          }
          visitor.start(new XmlElement(reader, depth++));
        }
        case XMLStreamConstants.END_ELEMENT -> {
          depth--;
          visitor.end(reader.getLocalName());
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
            visitor.text(reader.getText());
        case XMLStreamConstants.DTD ->
            throw Refusal.input(what.fault(DOCUMENT_TYPE).remedy(SAVE_AGAIN));
        case XMLStreamConstants.ENTITY_REFERENCE ->
            throw damaged(what, reader, "it has an entity, " + reader.getLocalName());
        default -> {
          // Comments and instructions say nothing here.
        }
      }
    }
  }

  private static Refusal damaged(PartLabel what, XMLStreamReader reader, String found) {
    return Refusal.input(
        what.fault(reader.getLocation().getLineNumber(), found + ", which no valid workbook has")
            .remedy("save the workbook again"));
  }
}
