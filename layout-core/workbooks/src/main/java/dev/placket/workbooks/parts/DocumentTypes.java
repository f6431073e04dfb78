package dev.placket.workbooks.parts;

import dev.placket.packs.refusal.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Locale;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Refuses document types, in whatever part: ISO/IEC 29500-2 forbids them, and who reads the copy
 * could be led outside by one. Only what comes before the root is read.
 */
final class DocumentTypes {
  private DocumentTypes() {}

  /**
   * Checks a part.
   *
   * @param in its bytes
   * @throws Refusal naming the part, if it has a document type
   * @throws IOException if the package is damaged there
   */
  static void check(Path file, String part, InputStream in) throws Refusal, IOException {
    String name = part.toLowerCase(Locale.ROOT);
    if (!name.endsWith(".xml") && !name.endsWith(".rels") && !name.endsWith(".vml")) {
      return;
    }
    try {
      XMLStreamReader reader = XmlPart.reader(in);
      while (reader.hasNext()) {
        int next = reader.next();
        if (next == XMLStreamConstants.DTD) {
          throw Refusal.input(
              new PartLabel(file.toString(), part)
                  .fault(XmlPart.DOCUMENT_TYPE)
                  .remedy(XmlPart.SAVE_AGAIN));
        }
        if (next == XMLStreamConstants.START_ELEMENT) {
          return;
        }
      }
    } catch (XMLStreamException e) {
      // It is damaged: whoever needs it says so.
    }
  }
}
