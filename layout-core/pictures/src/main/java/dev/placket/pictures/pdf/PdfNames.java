package dev.placket.pictures.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.jspecify.annotations.Nullable;

/** The names that a PDF gives its pages: page labels and bookmarks. */
final class PdfNames {
  /** More bookmarks are not looked through; a loop of them ends here, too. */
  private static final int MOST = 10_000;

  private static final int DEEPEST = 32;

  private final PDDocument document;
  private final Map<COSDictionary, Integer> pages = new HashMap<>();
  private final Map<Integer, String> bookmarks = new HashMap<>();
  private int seen;

  private PdfNames(PDDocument document) {
    this.document = document;
  }

  /** The names of all pages in their order. */
  static List<PdfPart> of(PDDocument document) {
    PdfNames names = new PdfNames(document);
    int index = 0;
    for (PDPage page : document.getPages()) {
      names.pages.put(page.getCOSObject(), index++);
    }
    names.readBookmarks();
    String[] labels = names.labels();
    List<PdfPart> parts = new ArrayList<>();
    for (int i = 0; i < index; i++) {
      String label = i < labels.length ? labels[i] : null;
      parts.add(new PdfPart(i + 1, telling(label), telling(names.bookmarks.get(i))));
    }
    return List.copyOf(parts);
  }

  /** A name that says more than a number: it has a letter beyond a roman numeral. */
  private static @Nullable String telling(@Nullable String name) {
    if (name == null || name.isBlank() || name.strip().matches("[0-9]+|[ivxlcdm]+|[IVXLCDM]+|.")) {
      return null;
    }
    return name.strip();
  }

  private String[] labels() {
    try {
      PDPageLabels labels = document.getDocumentCatalog().getPageLabels();
      return labels == null ? new String[0] : labels.getLabelsByPageIndices();
    } catch (IOException | RuntimeException e) {
      // Faulty labels name nothing; the pages are there all the same.
      return new String[0];
    }
  }

  private void readBookmarks() {
    try {
      PDDocumentOutline outline = document.getDocumentCatalog().getDocumentOutline();
      if (outline != null) {
        read(outline, 0);
      }
    } catch (IOException | RuntimeException e) {
      // As with labels.
    }
  }

  private void read(PDOutlineNode node, int depth) throws IOException {
    PDOutlineItem item = node.getFirstChild();
    while (item != null && seen++ < MOST && depth < DEEPEST) {
      PDPage page = item.findDestinationPage(document);
      COSBase its = page == null ? null : page.getCOSObject();
      Integer index = its == null ? null : pages.get((COSDictionary) its);
      if (index != null) {
        bookmarks.putIfAbsent(index, String.valueOf(item.getTitle()));
      }
      read(item, depth + 1);
      item = item.getNextSibling();
    }
  }
}
