package dev.placket.packs.page;

import dev.placket.layout.units.Rect;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** The structure behind the pages (ISO 32000-1, 14.7): what is text, what is a figure, in order. */
final class Tags {
  static final COSName FIGURE = COSName.getPDFName("Figure");

  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement whole;
  private final COSArray parents = new COSArray();
  private COSArray ofPage = new COSArray();
  private PDPage page = new PDPage();
  private int pages;

  Tags(PDDocument document) {
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    document.getDocumentCatalog().setMarkInfo(marked);
    document.getDocumentCatalog().setStructureTreeRoot(root);
    whole = new PDStructureElement("Document", root);
    root.appendKid(whole);
  }

  void open(PDPage opened) {
    page = opened;
    page.setStructParents(pages);
    page.getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
    ofPage = new COSArray();
  }

  void close() {
    parents.add(COSInteger.get(pages));
    parents.add(ofPage);
    pages++;
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, parents);
    root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
    root.setParentTreeNextKey(pages);
  }

  int paragraph() {
    return next("P").mcid;
  }

  /** A figure with what it shows and where, in points from the page's lower left. */
  int figure(String alternative, Rect ink, double pageHeight) {
    Marked m = next("Figure");
    m.element.setAlternateDescription(alternative);
    COSArray box = new COSArray();
    box.add(new COSFloat((float) ink.left()));
    box.add(new COSFloat((float) (pageHeight - ink.bottom())));
    box.add(new COSFloat((float) ink.right()));
    box.add(new COSFloat((float) (pageHeight - ink.top())));
    COSDictionary layout = new COSDictionary();
    layout.setName(COSName.O, "Layout");
    layout.setName(COSName.getPDFName("Placement"), "Block");
    layout.setItem(COSName.BBOX, box);
    m.element.getCOSObject().setItem(COSName.A, layout);
    return m.mcid;
  }

  private record Marked(PDStructureElement element, int mcid) {}

  private Marked next(String type) {
    PDStructureElement element = new PDStructureElement(type, whole);
    element.setPage(page);
    int mcid = ofPage.size();
    element.appendKid(mcid);
    whole.appendKid(element);
    ofPage.add(element.getCOSObject());
    return new Marked(element, mcid);
  }
}
