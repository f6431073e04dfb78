package dev.placket.pictures.pdf;

import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a page to the typefaces that its file embeds: for any other, PDFBox would look through
 * those of the machine, and the page would look different on each.
 */
final class EmbeddedFonts {
  private static final Set<String> TEXTS = Set.of("Tj", "TJ", "'", "\"");
  private static final List<COSName> PROGRAMS =
      List.of(COSName.FONT_FILE, COSName.FONT_FILE2, COSName.FONT_FILE3);

  private final PDFStreamEngine engine;
  private String missing = "";

  EmbeddedFonts(PDFStreamEngine engine) {
    this.engine = engine;
  }

  /**
   * Whether an operator is passed over: the choice of a typeface that is not embedded, and text in
   * it that is not seen.
   *
   * @throws MissingTypeface for text in it that is seen
   */
  boolean passesOver(String operator, List<COSBase> operands) throws MissingTypeface {
    if (operator.equals("Tf")) {
      COSDictionary font = operands.isEmpty() ? null : font(operands.get(0));
      if (font == null || isEmbedded(font)) {
        return false;
      }
      missing = font.getNameAsString(COSName.BASE_FONT, "without a name");
      engine.getGraphicsState().getTextState().setFont(null);
      return true;
    }
    if (!TEXTS.contains(operator) || engine.getGraphicsState().getTextState().getFont() != null) {
      return false;
    }
    var mode = engine.getGraphicsState().getTextState().getRenderingMode();
    if (mode.isFill() || mode.isStroke()) {
      throw new MissingTypeface(missing);
    }
    return true;
  }

  private @Nullable COSDictionary font(COSBase name) {
    PDResources resources = engine.getResources();
    COSDictionary fonts =
        resources == null ? null : resources.getCOSObject().getCOSDictionary(COSName.FONT);
    return fonts != null && name instanceof COSName n ? fonts.getCOSDictionary(n) : null;
  }

  private static boolean isEmbedded(COSDictionary font) {
    if (COSName.TYPE3.equals(font.getCOSName(COSName.SUBTYPE))) {
      return true;
    }
    COSArray descendants = font.getCOSArray(COSName.DESCENDANT_FONTS);
    COSDictionary described =
        descendants != null && descendants.getObject(0) instanceof COSDictionary d ? d : font;
    COSDictionary descriptor = described.getCOSDictionary(COSName.FONT_DESC);
    return descriptor != null && PROGRAMS.stream().anyMatch(descriptor::containsKey);
  }
}
