package dev.placket.pictures.svg.parse;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.ErrorText;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.pictures.fault.ReadLimit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.DOMException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.ext.DefaultHandler2;

/**
 * Reads a drawing into a document, refusing what is not safe while it reads, so that nothing
 * unchecked ever stands in the document.
 */
public final class SvgParser extends DefaultHandler2 {
  public static final String SVG = "http://www.w3.org/2000/svg";
  private static final String HERE = "file:/drawing.svg";

  /** The namespace of what stands for an element that is passed over. */
  private static final String LEFT_OUT = "urn:left-out";

  private final String name;
  private final ReadLimits limits;
  private @Nullable Locator locator;
  private @Nullable SVGOMDocument document;
  private @Nullable Element open;
  private int elements;
  private int depth;
  private int skipping;
  private long memory;
  private final Set<PictureNote> notes = new LinkedHashSet<>();

  private SvgParser(String name, ReadLimits limits) {
    this.name = name;
    this.limits = limits;
  }

  /**
   * Reads a drawing.
   *
   * @param notes takes what was left out
   */
  public static SVGOMDocument parse(
      String name, byte[] bytes, ReadLimits limits, Collection<PictureNote> notes)
      throws PictureException {
    SvgParser parser = new SvgParser(name, limits);
    try {
      XMLReader reader = reader();
      reader.setContentHandler(parser);
      reader.setErrorHandler(parser);
      reader.setEntityResolver(parser);
      reader.setProperty("http://xml.org/sax/properties/declaration-handler", parser);
      reader.parse(new InputSource(new ByteArrayInputStream(bytes)));
    } catch (Refusal e) {
      throw new PictureException(e.fault, e);
    } catch (SAXParseException e) {
      throw new PictureException(
          Fault.content(name, "the XML is broken (" + ErrorText.by(e) + ")")
              .at(Place.line(e.getLineNumber()))
              .remedy("export the drawing again"),
          e);
    } catch (SAXException | IOException | RuntimeException e) {
      throw new PictureException(
          Fault.content(name, "the XML cannot be read (" + ErrorText.by(e) + ")")
              .remedy("export the drawing again"),
          e);
    }
    SVGOMDocument read = parser.document;
    if (read == null) {
      throw new PictureException(
          Fault.content(name, "contains no drawing").remedy("export it as SVG again"));
    }
    notes.addAll(parser.notes);
    return read;
  }

  /**
   * Takes out what stands for elements that were passed over. Until the style sheets are applied it
   * keeps the places among siblings.
   */
  public static void removeLeftOut(Element root) {
    NodeList all = root.getElementsByTagNameNS(LEFT_OUT, "*");
    List<Node> found = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      found.add(all.item(i));
    }
    found.forEach(n -> n.getParentNode().removeChild(n));
  }

  @Override
  public void processingInstruction(String target, String data) {
    if (target.equals("xml-stylesheet")) {
      left(
          "a style sheet outside of the drawing (<?xml-stylesheet?>) is left out; export with the"
              + " styles inside");
    }
  }

  private void left(String what) {
    notes.add(PictureNote.changed(what));
  }

  private static XMLReader reader() throws SAXException {
    try {
      // The JDK's own parser: another one on the class path might not know these features.
      SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
      factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return factory.newSAXParser().getXMLReader();
    } catch (ParserConfigurationException e) {
      throw new SAXException(e);
    }
  }

  @Override
  public void setDocumentLocator(Locator where) {
    locator = where;
  }

  @Override
  public void internalEntityDecl(String entity, String value) throws SAXException {
    refuse("declares the entity '" + entity + "'", "save it as plain SVG, without entities");
  }

  @Override
  public void externalEntityDecl(
      String entity, @Nullable String publicId, @Nullable String systemId) throws SAXException {
    refuse(
        "declares the entity '" + entity + "', which points outside the drawing",
        "save it as plain SVG, without entities");
  }

  @Override
  public InputSource resolveEntity(
      String entity, @Nullable String publicId, @Nullable String base, String systemId)
      throws SAXException {
    refuse("points to '" + systemId + "', outside the drawing", "save it as plain SVG");
    return new InputSource();
  }

  @Override
  public void startElement(String uri, String local, String qName, Attributes attributes)
      throws SAXException {
    if (++elements > limits.elements()) {
      over(
          ReadLimit.ELEMENTS,
          "has more than " + limits.elements() + " elements",
          "simplify the drawing");
    }
    if (++depth > limits.depth()) {
      over(
          ReadLimit.DEPTH,
          "has elements more than " + limits.depth() + " deep",
          "ungroup the drawing");
    }
    boolean effect = open != null && open.getLocalName().equals("filter");
    if (skipping > 0 || effect || (document != null && SvgGuard.leavesOut(uri, local))) {
      if (skipping == 0 && !effect) {
        standIn(local);
      }
      skipping++;
      return;
    }
    String fault = SvgGuard.element(uri, local);
    if (fault != null) {
      refuse(fault, "take it out and save again");
    }
    try {
      add(uri, local, qName, attributes);
    } catch (DOMException e) {
      left(
          "the element <"
              + ErrorText.line(local)
              + "> is not known here and is left out; replace it");
      standIn(local);
      skipping++;
    }
  }

  private void standIn(String local) throws SAXException {
    Element parent = open;
    if (parent != null) {
      spend(DrawingMemory.ELEMENT, 0);
      parent.appendChild(parent.getOwnerDocument().createElementNS(LEFT_OUT, local));
    }
  }

  private void add(String uri, String local, String qName, Attributes attributes)
      throws SAXException {
    spend(DrawingMemory.ELEMENT, 0);
    Element parent = open;
    Element element;
    if (parent == null) {
      if (!uri.equals(SVG) || !local.equals("svg")) {
        refuse("begins with <" + qName + ">, which is no SVG", "export the drawing as SVG");
      }
      SVGOMDocument made =
          (SVGOMDocument)
              SVGDOMImplementation.getDOMImplementation().createDocument(uri, qName, null);
      made.setDocumentURI(HERE);
      document = made;
      element = made.getDocumentElement();
    } else {
      element = parent.getOwnerDocument().createElementNS(uri, qName);
      parent.appendChild(element);
    }
    for (int i = 0; i < attributes.getLength(); i++) {
      String value = attributes.getValue(i);
      if (SvgGuard.leavesOutAttribute(local, attributes.getURI(i), attributes.getLocalName(i))) {
        continue;
      }
      if (SvgGuard.leavesOutReference(local, attributes.getLocalName(i), value)) {
        left(
            "what <"
                + local
                + "> takes from '"
                + ErrorText.line(value)
                + "', outside of the drawing, is left out; export it whole");
        continue;
      }
      String fault = SvgGuard.attribute(attributes.getLocalName(i), value);
      if (fault != null) {
        refuse("<" + qName + "> " + fault, "take it out and save again");
      }
      DrawingMemory.Attribute memory =
          DrawingMemory.attribute(local, attributes.getLocalName(i), value);
      spend(memory.kept(), memory.building());
      String space = attributes.getURI(i);
      element.setAttributeNS(space.isEmpty() ? null : space, attributes.getQName(i), value);
    }
    open = element;
  }

  private void spend(long kept, long building) throws SAXException {
    memory += kept;
    if (memory + building > limits.memory()) {
      over(
          ReadLimit.MEMORY,
          "needs more memory than the limit of " + (limits.memory() >> 20) + " MiB",
          building > 0
              ? "split its longest paths, or simplify them"
              : "simplify the drawing, and turn long text into paths");
    }
  }

  @Override
  public void endElement(String uri, String local, String qName) throws SAXException {
    depth--;
    if (skipping > 0) {
      skipping--;
      return;
    }
    Element closing = open;
    if (closing == null) {
      return;
    }
    if (local.equals("style")) {
      String fault = SvgGuard.css(closing.getTextContent());
      if (fault != null) {
        refuse("<style> " + fault, "take it out and save again");
      }
    }
    open = closing.getParentNode() instanceof Element parent ? parent : null;
  }

  @Override
  public void characters(char[] text, int start, int length) throws SAXException {
    Element parent = open;
    if (skipping == 0 && parent != null) {
      String words = new String(text, start, length);
      spend(DrawingMemory.text(parent.getLocalName(), words), 0);
      parent.appendChild(parent.getOwnerDocument().createTextNode(words));
    }
  }

  @Override
  public void error(SAXParseException e) throws SAXException {
    throw e;
  }

  private void refuse(String found, String todo) throws SAXException {
    throw new Refusal(located(Fault.content(name, found)).remedy(todo));
  }

  private void over(ReadLimit limit, String found, String todo) throws SAXException {
    throw new Refusal(
        located(Fault.limit(name, found)).remedy(todo).remedy("raise the limit", limit));
  }

  private Fault located(Fault fault) {
    Locator where = locator;
    return where == null ? fault : fault.at(Place.line(where.getLineNumber()));
  }

  /** A fault on its way through the parser. */
  private static final class Refusal extends SAXException {
    private static final long serialVersionUID = 1;

    private final transient Fault fault;

    Refusal(Fault fault) {
      super(fault.message());
      this.fault = fault;
    }
  }
}
