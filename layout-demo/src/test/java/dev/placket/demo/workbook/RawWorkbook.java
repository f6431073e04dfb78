package dev.placket.demo.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * A workbook read from its raw XML by tests, sharing no code with what they test. Formulas are
 * those of ISO/IEC 29500-1, 18.3.1.13 and 20.5.2, written down anew.
 */
final class RawWorkbook {
  /** The widest digit of 11 points, 7 pixels, as in the standard's example. */
  private static final int DIGIT = 7;

  private static final long PIXEL = 9525;
  private static final long POINT = 12_700;

  final Map<String, byte[]> parts = new LinkedHashMap<>();

  RawWorkbook(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        try (InputStream in = zip.getInputStream(entry)) {
          parts.put(entry.getName(), in.readAllBytes());
        }
      }
    }
  }

  /** An anchor as its XML has it, in EMU. */
  record Anchor(
      String kind, String name, long[] from, long @Nullable [] to, long width, long height) {}

  /** Left, top, right, bottom in EMU from the worksheet's corner. */
  record Rect(String what, long left, long top, long right, long bottom) {
    boolean overlaps(Rect o) {
      return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
    }
  }

  /** The bytes of a part that is there. */
  byte[] part(String name) {
    byte[] bytes = parts.get(name);
    if (bytes == null) {
      throw new AssertionError("no part " + name + " in " + parts.keySet());
    }
    return bytes;
  }

  Document xml(String part) {
    byte[] bytes = part(part);
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    } catch (Exception e) {
      throw new AssertionError(part, e);
    }
  }

  List<Anchor> anchors(String drawing) {
    List<Anchor> anchors = new ArrayList<>();
    for (Element e : children(xml(drawing).getDocumentElement())) {
      Element ext = child(e, "ext");
      NodeList names = e.getElementsByTagNameNS("*", "cNvPr");
      anchors.add(
          new Anchor(
              e.getLocalName(),
              ((Element) names.item(0)).getAttribute("name"),
              Objects.requireNonNull(spot(child(e, "from"))),
              spot(child(e, "to")),
              ext == null ? 0 : Long.parseLong(ext.getAttribute("cx")),
              ext == null ? 0 : Long.parseLong(ext.getAttribute("cy"))));
    }
    return anchors;
  }

  private static long @Nullable [] spot(@Nullable Element at) {
    if (at == null) {
      return null;
    }
    long[] spot = new long[4];
    String[] names = {"col", "colOff", "row", "rowOff"};
    for (int i = 0; i < 4; i++) {
      spot[i] = Long.parseLong(need(at, names[i]).getTextContent());
    }
    return spot;
  }

  /** EMU of the first columns, as their XML and the standard's formula have it. */
  long[] columns(String sheet, int count) {
    Element root = xml(sheet).getDocumentElement();
    Element format = child(root, "sheetFormatPr");
    String usual = format == null ? "" : format.getAttribute("defaultColWidth");
    double other =
        usual.isEmpty()
            ? Math.floor((8.0 * DIGIT + 5) / DIGIT * 256) / 256
            : Double.parseDouble(usual);
    long[] emu = new long[count];
    java.util.Arrays.fill(emu, pixels(other) * PIXEL);
    Element cols = child(root, "cols");
    for (Element col : cols == null ? List.<Element>of() : children(cols)) {
      int last = Integer.parseInt(col.getAttribute("max"));
      for (int i = Integer.parseInt(col.getAttribute("min")) - 1; i < Math.min(count, last); i++) {
        boolean hidden = col.getAttribute("hidden").matches("1|true");
        emu[i] = hidden ? 0 : pixels(Double.parseDouble(col.getAttribute("width"))) * PIXEL;
      }
    }
    return emu;
  }

  private static long pixels(double width) {
    return (long) Math.floor((256 * width + Math.floor(128.0 / DIGIT)) / 256 * DIGIT);
  }

  /** EMU of the first rows, in points as their XML has it. */
  long[] rows(String sheet, int count) {
    Element root = xml(sheet).getDocumentElement();
    double usual = Double.parseDouble(need(root, "sheetFormatPr").getAttribute("defaultRowHeight"));
    long[] emu = new long[count];
    java.util.Arrays.fill(emu, Math.round(usual * POINT));
    for (Element row : children(need(root, "sheetData"))) {
      int i = Integer.parseInt(row.getAttribute("r")) - 1;
      if (i < count && row.getAttribute("hidden").matches("1|true")) {
        emu[i] = 0;
      } else if (i < count && row.hasAttribute("ht")) {
        emu[i] = Math.round(Double.parseDouble(row.getAttribute("ht")) * POINT);
      }
    }
    return emu;
  }

  static Rect rect(Anchor a, long[] columns, long[] rows) {
    long left = sum(columns, (int) a.from()[0]) + Math.min(a.from()[1], columns[(int) a.from()[0]]);
    long top = sum(rows, (int) a.from()[2]) + Math.min(a.from()[3], rows[(int) a.from()[2]]);
    long[] to = a.to();
    if (to == null) {
      return new Rect(a.name(), left, top, left + a.width(), top + a.height());
    }
    return new Rect(
        a.name(), left, top, sum(columns, (int) to[0]) + to[1], sum(rows, (int) to[2]) + to[3]);
  }

  static long sum(long[] sizes, int end) {
    long sum = 0;
    for (int i = 0; i < end; i++) {
      sum += sizes[i];
    }
    return sum;
  }

  static Element need(Element of, String name) {
    return Objects.requireNonNull(child(of, name), name);
  }

  static @Nullable Element child(Element of, String name) {
    return children(of).stream()
        .filter(e -> e.getLocalName().equals(name))
        .findFirst()
        .orElse(null);
  }

  static List<Element> children(Element of) {
    List<Element> list = new ArrayList<>();
    for (Node n = of.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element e) {
        list.add(e);
      }
    }
    return list;
  }
}
