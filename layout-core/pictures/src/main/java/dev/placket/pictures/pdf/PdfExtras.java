package dev.placket.pictures.pdf;

import dev.placket.pictures.base.PictureNote;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** Notes on what a PDF has beside the content of its pages, none of which is placed. */
final class PdfExtras {
  private static final COSName LINK = COSName.getPDFName("Link");
  private static final COSName POPUP = COSName.getPDFName("Popup");
  private static final COSName WIDGET = COSName.getPDFName("Widget");

  private static final int HIDDEN = 2;

  private PdfExtras() {}

  /** Of the document: scripts and attachments. */
  static List<PictureNote> ofDocument(COSDictionary catalog) {
    List<PictureNote> notes = new ArrayList<>();
    COSDictionary names = catalog.getCOSDictionary(COSName.NAMES);
    boolean scripts = names != null && names.containsKey(COSName.JAVA_SCRIPT);
    if (scripts || catalog.containsKey(COSName.AA) || isScript(catalog)) {
      notes.add(PictureNote.plain("has scripts, which are left out and never run"));
    }
    if (names != null && names.containsKey(COSName.EMBEDDED_FILES)) {
      notes.add(PictureNote.plain("has attached files, which are left out"));
    }
    return notes;
  }

  private static boolean isScript(COSDictionary catalog) {
    COSDictionary action = catalog.getCOSDictionary(COSName.OPEN_ACTION);
    return action != null && COSName.JAVA_SCRIPT.equals(action.getCOSName(COSName.S));
  }

  /** Of a page: form fields, comments and what else lies over its content. */
  static List<PictureNote> ofPage(COSDictionary page) {
    COSArray annotations = page.getCOSArray(COSName.ANNOTS);
    int fields = 0;
    int comments = 0;
    for (int i = 0; annotations != null && i < annotations.size(); i++) {
      if (annotations.getObject(i) instanceof COSDictionary annotation && isSeen(annotation)) {
        boolean field = WIDGET.equals(annotation.getCOSName(COSName.SUBTYPE));
        fields += field ? 1 : 0;
        comments += field ? 0 : 1;
      }
    }
    List<PictureNote> notes = new ArrayList<>();
    if (fields > 0) {
      notes.add(
          PictureNote.changed(
              "the form fields, "
                  + fields
                  + " of them, are left out; export the page with its fields flattened"));
    }
    if (comments > 0) {
      notes.add(
          PictureNote.changed(
              "the comments and stamps, "
                  + comments
                  + " of them, are left out; flatten those that belong to the drawing"));
    }
    return notes;
  }

  private static boolean isSeen(COSDictionary annotation) {
    COSName kind = annotation.getCOSName(COSName.SUBTYPE);
    boolean shows = !LINK.equals(kind) && !POPUP.equals(kind);
    return shows && (annotation.getInt(COSName.F, 0) & HIDDEN) == 0;
  }
}
