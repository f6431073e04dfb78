package dev.placket.pictures;

import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.css.StyleSheets;
import dev.placket.pictures.css.TooManySteps;
import dev.placket.pictures.fault.ErrorText;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.shape.InkBoxes;
import dev.placket.pictures.shape.TooManyCrossings;
import dev.placket.pictures.svg.Audit;
import dev.placket.pictures.svg.bridge.PaintOrder;
import dev.placket.pictures.svg.bridge.RightContext;
import dev.placket.pictures.svg.font.GivenFonts;
import dev.placket.pictures.svg.layer.Blending;
import dev.placket.pictures.svg.layer.OpacityFolding;
import dev.placket.pictures.svg.measure.DashCount;
import dev.placket.pictures.svg.measure.DrawingWork;
import dev.placket.pictures.svg.measure.DrawnBounds;
import dev.placket.pictures.svg.measure.FarPaths;
import dev.placket.pictures.svg.measure.FineDashes;
import dev.placket.pictures.svg.measure.FineParts;
import dev.placket.pictures.svg.measure.GeometryBox;
import dev.placket.pictures.svg.mend.PaintMending;
import dev.placket.pictures.svg.parse.PlainReferences;
import dev.placket.pictures.svg.parse.References;
import dev.placket.pictures.svg.parse.SvgParser;
import dev.placket.pictures.svg.parse.SvgPart;
import dev.placket.pictures.svg.parse.SvgSize;
import dev.placket.pictures.svg.parse.SvgWeight;
import dev.placket.pictures.svg.rewrite.Repairs;
import dev.placket.pictures.svg.rewrite.Rewritings;
import dev.placket.pictures.typeface.Typefaces;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.gvt.GraphicsNode;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** From the bytes of an SVG to a drawing: checked, sized, built, folded, measured. */
final class DrawingReader {
  /** With fewer steps over the longer side, rounded points are seen in print. */
  private static final double LEAST_STEPS = 4_000;

  /** Matching a rule takes as long as reading so many characters. */
  private static final int STYLE_STEP = 8;

  private DrawingReader() {}

  /**
   * Reads a drawing.
   *
   * @param part the identifier of the element that is drawn alone; null for all
   */
  static Drawing read(
      String name,
      @Nullable String part,
      byte[] bytes,
      String format,
      String digest,
      List<PictureNote> before,
      ReadLimits limits,
      Typefaces typefaces)
      throws PictureException {
    try {
      return checked(name, part, bytes, format, digest, before, limits, typefaces);
    } catch (OutOfMemoryError e) {
      throw ReadLimits.outOfMemory(name, e);
    }
  }

  private static Drawing checked(
      String name,
      @Nullable String part,
      byte[] bytes,
      String format,
      String digest,
      List<PictureNote> before,
      ReadLimits limits,
      Typefaces typefaces)
      throws PictureException {
    List<PictureNote> notes = new ArrayList<>(before);
    SVGOMDocument document = SvgParser.parse(name, bytes, limits, notes);
    Element root = document.getDocumentElement();
    notes.addAll(styled(name, document, limits));
    if (part != null) {
      SvgPart.show(name, document, part);
    }
    SvgParser.removeLeftOut(root);
    PlainReferences.adopt(root);
    notes.addAll(References.mend(root));
    Repairs.apply(root).forEach(n -> notes.add(PictureNote.changed(n)));
    SvgWeight.check(name, root, limits);
    Audit.of(root).forEach(text -> notes.add(PictureNote.changed(text)));
    Rewritings.apply(root).forEach(n -> notes.add(PictureNote.changed(n)));
    SvgSize size = SvgSize.of(name, root);
    notes.addAll(farAway(size.content()));
    FineDashes.check(name, root, size.viewBox(), limits);
    showWhole(root, size.viewBox(), size.content());
    try {
      return build(name, format, digest, notes, document, size, limits, new GivenFonts(typefaces));
    } catch (BridgeException e) {
      throw new PictureException(
          Fault.content(name, "the drawing is faulty (" + lastLine(e) + ")")
              .remedy("mend it and save again"),
          e);
    } catch (TooManyCrossings e) {
      throw new PictureException(
          Fault.limit(name, "has " + e.getMessage() + ", over the limit")
              .remedy("draw them with simpler paths"),
          e);
    } catch (RuntimeException | StackOverflowError e) {
      throw new PictureException(
          Fault.content(name, "the drawing cannot be drawn (" + lastLine(e) + ")")
              .remedy("save it as plain SVG"),
          e);
    }
  }

  private static List<PictureNote> styled(String name, SVGOMDocument document, ReadLimits limits)
      throws PictureException {
    try {
      Element root = document.getDocumentElement();
      return StyleSheets.apply(document, SvgSize.page(name, root), styleSteps(limits)).stream()
          .map(note -> new PictureNote(note.text(), note.changesDrawing()))
          .toList();
    } catch (TooManySteps e) {
      throw PictureException.over(
          ReadLimit.CHARACTERS,
          Fault.limit(
                  name, "its style sheets take more than " + styleSteps(limits) + " steps to apply")
              .remedy("save it with presentation attributes"));
    }
  }

  private static long styleSteps(ReadLimits limits) {
    return Math.max(1, limits.characters() / STYLE_STEP);
  }

  /** Coordinates are kept with 24 bits (IEEE 754), which far from the origin are few. */
  private static List<PictureNote> farAway(ViewBox box) {
    double x = Math.max(Math.abs(box.x()), Math.abs(box.x() + box.width()));
    double y = Math.max(Math.abs(box.y()), Math.abs(box.y() + box.height()));
    double step = Math.ulp((float) Math.max(x, y));
    return step * LEAST_STEPS <= Math.max(box.width(), box.height())
        ? List.of()
        : List.of(
            PictureNote.changed(
                "lies so far from the origin that its points are rounded to "
                    + (float) step
                    + " units; move it near 0 before export"));
  }

  /** One unit of the viewport becomes one drawing unit, whatever size the file asks for. */
  private static void showWhole(Element root, ViewBox box, ViewBox content) {
    root.setAttributeNS(null, "width", Double.toString(box.width()));
    root.setAttributeNS(null, "height", Double.toString(box.height()));
    root.setAttributeNS(
        null,
        "viewBox",
        content.x() + " " + content.y() + " " + content.width() + " " + content.height());
    root.setAttributeNS(null, "preserveAspectRatio", "none");
    root.removeAttributeNS(null, "x");
    root.removeAttributeNS(null, "y");
  }

  private static Drawing build(
      String name,
      String format,
      String digest,
      List<PictureNote> before,
      SVGOMDocument document,
      SvgSize size,
      ReadLimits limits,
      GivenFonts fonts)
      throws PictureException {
    ViewBox view = size.viewBox();
    QuietAgent agent = new QuietAgent(view, fonts);
    BridgeContext context = new RightContext(agent, new QuietAgent.NoLoader(agent));
    context.setTextPainter(
        new StrokingTextPainter() {
          @Override
          protected FontFamilyResolver getFontFamilyResolver() {
            return fonts;
          }
        });
    fonts.adopt(name, document, context);
    // Interactive only so that elements stay tied to what they became: points need it.
    context.setDynamicState(BridgeContext.INTERACTIVE);
    GraphicsNode node = new GVTBuilder().build(context, document);
    PaintOrder.apply(node, context);
    fonts.compare(document);
    DashCount.check(name, node, limits);
    FarPaths.check(name, node, Math.max(view.width(), view.height()));
    Rectangle2D all = new Rectangle2D.Double(0, 0, view.width(), view.height());
    DrawingWork.check(name, node, all, limits);
    PaintMending mending = new PaintMending(Math.max(view.width(), view.height()));
    mending.mend(node);
    Blending blending = Blending.of(node, context);
    OpacityFolding folding = new OpacityFolding(blending);
    folding.fold(node, 1);
    Rectangle2D shown = new Rectangle2D.Double(view.x(), view.y(), view.width(), view.height());
    DrawnBounds bounds = new DrawnBounds(shown);
    AffineTransform toUnits = AffineTransform.getTranslateInstance(view.x(), view.y());
    bounds.addRoot(node, toUnits);
    Rectangle2D ink = bounds.box();
    if (ink == null) {
      throw new PictureException(
          Fault.content(name, "draws nothing inside its viewBox")
              .remedy("check the viewBox and the colours"));
    }
    // What is placed is the ink, however small in the view.
    DrawingWork.check(name, node, placed(ink, view), limits);
    Rectangle2D ground = Objects.requireNonNull(bounds.withGround());
    Map<String, GraphicsNode> named = named(document, context);
    return new SvgDrawing(
        name,
        format,
        digest,
        bounds.ground(),
        size,
        InkBoxes.inked(ink),
        InkBoxes.inked(ground),
        points(named, toUnits),
        named,
        FineParts.of(node, toUnits, shown),
        notes(before, mending, folding, fonts),
        node,
        folding.plan());
  }

  /** In the coordinates of the root, and never without width or height. */
  private static Rectangle2D placed(Rectangle2D ink, ViewBox view) {
    return new Rectangle2D.Double(
        ink.getX() - view.x(), ink.getY() - view.y(), ink.getWidth(), ink.getHeight());
  }

  private static Map<String, PlanePoint> points(
      Map<String, GraphicsNode> named, AffineTransform toUnits) {
    Map<String, PlanePoint> points = new TreeMap<>();
    named.forEach(
        (id, node) -> {
          PlanePoint centre = centre(node, toUnits);
          if (centre != null) {
            points.put(id, centre);
          }
        });
    return points;
  }

  private static Map<String, GraphicsNode> named(SVGOMDocument document, BridgeContext context) {
    Map<String, GraphicsNode> named = new TreeMap<>();
    NodeList all = document.getElementsByTagNameNS("*", "*");
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      String id = e.getAttribute("id");
      GraphicsNode node = id.isEmpty() ? null : context.getGraphicsNode(e);
      if (node != null) {
        named.putIfAbsent(id, node);
      }
    }
    return named;
  }

  private static @Nullable PlanePoint centre(GraphicsNode node, AffineTransform toUnits) {
    AffineTransform at = new AffineTransform(toUnits);
    at.concatenate(node.getGlobalTransform());
    Rectangle2D there = GeometryBox.of(node, at);
    return there == null ? null : new PlanePoint(there.getCenterX(), there.getCenterY());
  }

  private static List<PictureNote> notes(
      List<PictureNote> before, PaintMending mending, OpacityFolding folding, GivenFonts fonts) {
    List<PictureNote> notes = new ArrayList<>(before);
    notes.addAll(mending.notes());
    if (folding.showsOverlaps()) {
      notes.add(
          PictureNote.changed(
              "parts of a faded marker or pattern are faded one by one, so overlaps show;"
                  + " expand it before export"));
    }
    fonts.notes().forEach(notes::add);
    return notes;
  }

  private static String lastLine(Throwable e) {
    String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    String[] lines = message.strip().split("\\R");
    return ErrorText.line(lines[lines.length - 1]);
  }
}
