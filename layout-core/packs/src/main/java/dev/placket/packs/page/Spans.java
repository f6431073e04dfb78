package dev.placket.packs.page;

import dev.placket.packs.text.LanguageMarks;
import dev.placket.packs.text.TextRun;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;

/**
 * Text of another language than that of the document, in spans that state theirs (ISO 32000-1,
 * 14.9.2.3).
 */
final class Spans {
  private static final COSName SPAN = COSName.getPDFName("Span");

  private final List<PDPropertyList> languages = new ArrayList<>();

  Spans(List<String> tags) {
    for (String tag : tags) {
      COSDictionary properties = new COSDictionary();
      properties.setString(COSName.LANG, tag);
      languages.add(PDPropertyList.create(properties));
    }
  }

  /** Shows a run where the text cursor is. */
  void show(PDPageContentStream out, TextRun run) throws IOException {
    boolean other = run.language() != LanguageMarks.LEADING && run.language() < languages.size();
    if (other) {
      out.beginMarkedContent(SPAN, languages.get(run.language()));
    }
    out.showText(run.text());
    if (other) {
      out.endMarkedContent();
    }
  }
}
