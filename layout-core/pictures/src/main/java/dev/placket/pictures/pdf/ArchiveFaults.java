package dev.placket.pictures.pdf;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDTrueTypeFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.jspecify.annotations.Nullable;

/**
 * Looks for what a page may not bring into a PDF/A-2 (ISO 19005-2, 6.1.13, 6.2). What is not known
 * to be allowed counts as a fault: a claim must not be wrong, one that is not made does no harm.
 */
final class ArchiveFaults {
  /** Nested saves of the state; the standard allows 28, of which the pack takes some. */
  private static final int DEEPEST = 24;

  /** The largest number that the standard allows. */
  private static final double LARGEST = 3.403e38;

  /** Widths in thousandths of the em may differ by so much. */
  private static final double WIDTH = 1;

  private static final Set<String> MODES =
      Set.of(
          "Normal",
          "Compatible",
          "Multiply",
          "Screen",
          "Overlay",
          "Darken",
          "Lighten",
          "ColorDodge",
          "ColorBurn",
          "HardLight",
          "SoftLight",
          "Difference",
          "Exclusion",
          "Hue",
          "Saturation",
          "Color",
          "Luminosity");
  private static final Set<String> INTENTS =
      Set.of("RelativeColorimetric", "AbsoluteColorimetric", "Perceptual", "Saturation");

  /** Names that mean a colour space beyond grey and RGB, or a filter that is not allowed. */
  private static final Set<String> NAMES =
      Set.of(
          "DeviceCMYK", "CMYK", "Separation", "DeviceN", "LZWDecode", "LZW", "JPXDecode", "Crypt");

  /** Keys that must not be there, whatever they say. */
  private static final Set<String> KEYS =
      Set.of(
          "TR",
          "TR2",
          "HTP",
          "HTO",
          "HT",
          "OPI",
          "Alternates",
          "Ref",
          "PS",
          "Metadata",
          "PieceInfo",
          "OC",
          "F",
          "FFilter",
          "CIDSet",
          "CharSet",
          "StructParent",
          "StructParents",
          "AA");

  private @Nullable String first;

  /** What was found first, as it completes "its page has"; null for nothing. */
  @Nullable String first() {
    return first;
  }

  private void add(String found) {
    first = first == null ? found : first;
  }

  /** Looks through all that a page refers to. O(objects). */
  void resources(PDPage page) {
    Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<COSBase> open = new ArrayDeque<>();
    push(open, page.getCOSObject().getDictionaryObject(COSName.RESOURCES));
    push(open, page.getCOSObject().getDictionaryObject(COSName.GROUP));
    while (!open.isEmpty() && first == null) {
      COSBase base = open.pop();
      if (!seen.add(base)) {
        continue;
      }
      if (base instanceof COSDictionary dictionary) {
        dictionary(dictionary, open);
      } else if (base instanceof COSArray array) {
        array(array, open);
      } else if (base instanceof COSName name && NAMES.contains(name.getName())) {
        add(name.getName());
      } else if (base instanceof COSNumber number && Math.abs(number.floatValue()) > LARGEST) {
        add("a number out of range");
      }
    }
  }

  private static void push(Deque<COSBase> open, @Nullable COSBase base) {
    COSBase plain = base instanceof COSObject object ? object.getObject() : base;
    if (plain != null) {
      open.push(plain);
    }
  }

  private void dictionary(COSDictionary dictionary, Deque<COSBase> open) {
    boolean stream = dictionary instanceof COSStream;
    for (COSName key : dictionary.keySet()) {
      String name = key.getName();
      COSBase value = dictionary.getDictionaryObject(key);
      boolean plain = name.equals("F") || name.equals("HT") || name.equals("PS");
      if (KEYS.contains(name) && (!plain || stream || name.equals("HT"))) {
        add("an entry " + name);
      }
      if (name.equals("BM") && !(value instanceof COSName n && MODES.contains(n.getName()))) {
        add("a blend mode that is not standard");
      }
      if (name.equals("Interpolate") && dictionary.getBoolean(key, false)) {
        add("a picture that asks to be smoothed");
      }
      if (name.equals("BitsPerComponent") && dictionary.getInt(key) == 16) {
        add("a picture of 16 bits");
      }
      if (!name.equals("Parent")) {
        push(open, value);
      }
    }
    if ("PS".equals(dictionary.getNameAsString(COSName.SUBTYPE))) {
      add("PostScript");
    }
  }

  private void array(COSArray array, Deque<COSBase> open) {
    for (COSBase item : array) {
      push(open, item);
    }
    if (COSName.ICCBASED.equals(array.size() > 1 ? array.getObject(0) : null)) {
      profile(array.getObject(1));
    }
  }

  /** A profile of grey or RGB, of version 2 or 4, and of a kind that a colour space may have. */
  private void profile(COSBase base) {
    if (!(base instanceof COSStream stream)) {
      add("a colour profile that cannot be read");
      return;
    }
    try (var in = stream.createInputStream()) {
      byte[] head = in.readNBytes(128);
      String kind = head.length < 128 ? "" : new String(head, 12, 4, "US-ASCII");
      String space = head.length < 128 ? "" : new String(head, 16, 4, "US-ASCII");
      int parts = stream.getInt(COSName.N);
      boolean known =
          List.of("mntr", "prtr", "scnr", "spac").contains(kind)
              && (space.equals("RGB ") && parts == 3 || space.equals("GRAY") && parts == 1)
              && (head[8] == 2 || head[8] == 4);
      if (!known) {
        add("a colour profile of another kind");
      }
    } catch (IOException e) {
      add("a colour profile that cannot be read");
    }
  }

  /**
   * Looks at an operator.
   *
   * @param depth how deep saves of the state lie inside one another
   */
  void operator(String name, List<COSBase> operands, int depth) {
    if (depth > DEEPEST) {
      add("states saved more than " + DEEPEST + " deep");
    }
    switch (name) {
      case "BI" -> add("a picture inside its content");
      case "k", "K" -> add("DeviceCMYK");
      case "ri" -> {
        if (!(operands.size() == 1
            && operands.get(0) instanceof COSName n
            && INTENTS.contains(n.getName()))) {
          add("a rendering intent that is not standard");
        }
      }
      default -> {
        for (COSBase operand : operands) {
          if (operand instanceof COSNumber n && Math.abs(n.floatValue()) > LARGEST
              || operand instanceof COSName cs && NAMES.contains(cs.getName())) {
            add("an operand that is not allowed");
          }
        }
      }
    }
  }

  /** Looks at a letter: what it means, its outline, and its width. */
  void glyph(PDFont font, int code) throws IOException {
    if (first != null) {
      return;
    }
    PDFontDescriptor descriptor = font.getFontDescriptor();
    if (font instanceof PDType3Font || descriptor == null) {
      add("letters that are drawn by its content");
    } else if (font.toUnicode(code) == null || font.toUnicode(code).isEmpty()) {
      add("letters without their meaning");
    } else if (!(font instanceof PDVectorFont vector) || !vector.hasGlyph(code)) {
      add("letters that its typeface lacks");
    } else if (Math.abs(font.getWidth(code) - font.getWidthFromFont(code)) > WIDTH) {
      add("letters of other widths than in their typeface");
    } else if (font instanceof PDTrueTypeFont && descriptor.isSymbolic()) {
      add("a typeface of symbols");
    }
  }
}
