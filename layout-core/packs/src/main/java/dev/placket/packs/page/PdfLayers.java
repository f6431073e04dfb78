package dev.placket.packs.page;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DPaintApplier;
import dev.placket.pictures.base.Blend;
import dev.placket.pictures.base.Layers;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.jspecify.annotations.Nullable;

/**
 * Layers as transparency groups (ISO 32000-1, 11.6.6): paths stay paths, and masks are soft masks
 * (11.6.5).
 */
final class PdfLayers implements Layers {
  private final PDDocument document;
  private final float width;
  private final float height;

  /** Layers in forms of one size, in the units of what they are drawn in. */
  PdfLayers(PDDocument document, float width, float height) {
    this.document = document;
    this.width = width;
    this.height = height;
  }

  /** A graphics whose layers become groups; its form is the drawing. */
  PdfBoxGraphics2D graphics() throws IOException {
    PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
    g.setPaintApplier(new Applier());
    g.setRenderingHint(KEY, this);
    return g;
  }

  @Override
  public void paint(Graphics2D g, Layer layer) {
    try {
      PDExtendedGraphicsState state = new PDExtendedGraphicsState();
      state.setNonStrokingAlphaConstant((float) layer.opacity());
      state.setBlendMode(mode(layer.blend()));
      Mask mask = layer.mask();
      if (mask != null) {
        COSDictionary soft = new COSDictionary();
        soft.setItem(COSName.TYPE, COSName.MASK);
        soft.setItem(COSName.S, mask.byAlpha() ? COSName.ALPHA : COSName.LUMINOSITY);
        soft.setItem(COSName.G, group(g, mask.content()));
        state.getCOSObject().setItem(COSName.SMASK, soft);
      }
      g.setPaint(new Painted(group(g, layer.content()), state));
      // A point alone is walked and filled without a mark (8.5.3.3).
      Path2D point = new Path2D.Double();
      point.moveTo(0, 0);
      g.fill(point);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PDFormXObject group(Graphics2D like, Consumer<Graphics2D> content) throws IOException {
    PdfBoxGraphics2D g = graphics();
    g.addRenderingHints(like.getRenderingHints());
    g.setTransform(like.getTransform());
    content.accept(g);
    g.dispose();
    PDFormXObject form = g.getXFormObject();
    COSDictionary group = new COSDictionary();
    group.setItem(COSName.TYPE, COSName.GROUP);
    group.setItem(COSName.S, COSName.TRANSPARENCY);
    group.setItem(COSName.CS, COSName.DEVICERGB);
    group.setBoolean(COSName.I, true);
    form.getCOSObject().setItem(COSName.GROUP, group);
    return form;
  }

  /** The names of both standards differ by hyphens and capitals alone (11.3.5). */
  private static BlendMode mode(Blend blend) {
    String name =
        Arrays.stream(blend.word().split("-"))
            .map(w -> Character.toUpperCase(w.charAt(0)) + w.substring(1))
            .collect(Collectors.joining());
    return BlendMode.getInstance(COSName.getPDFName(name));
  }

  /** A form in the place of a colour: only what applies paints is given the stream. */
  private record Painted(PDFormXObject form, PDExtendedGraphicsState state) implements Paint {
    @Override
    public java.awt.PaintContext createContext(
        java.awt.image.ColorModel model,
        java.awt.Rectangle device,
        java.awt.geom.Rectangle2D user,
        AffineTransform at,
        java.awt.RenderingHints hints) {
      throw new UnsupportedOperationException("painted by the stream alone");
    }

    @Override
    public int getTransparency() {
      return TRANSLUCENT;
    }
  }

  private static final class Applier extends PdfBoxGraphics2DPaintApplier {
    @Override
    public @Nullable PDShading applyPaint(
        Paint paint, PDPageContentStream out, AffineTransform at, IPaintEnv env)
        throws IOException {
      if (paint instanceof Painted layer) {
        out.setGraphicsStateParameters(layer.state());
        out.drawForm(layer.form());
        return null;
      }
      return super.applyPaint(paint, out, at, env);
    }
  }
}
