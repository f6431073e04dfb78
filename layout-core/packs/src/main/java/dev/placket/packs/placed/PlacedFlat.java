package dev.placket.packs.placed;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.fit.ExactBox;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.dimensions.LaidDimension;
import dev.placket.packs.flats.FlatCaption;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.LineWeight;
import dev.placket.packs.flats.ScaleLine;
import dev.placket.packs.flats.ScaleNote;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PdfDrawing;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.PlacedImage;
import dev.placket.pictures.base.PrintedDetail;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A flat with its place on the sheet and what follows from it.
 *
 * @param item the flat and its file
 * @param placement where it lies
 * @param target the longest side it aims at, at the fit's common scale
 * @param raster what its pixels come to; null for a drawing
 * @param callouts its callouts as they are drawn
 * @param dimensions its lines of measure as they are drawn
 */
public record PlacedFlat(
    FlatSet.Item item,
    Placement placement,
    Length target,
    @Nullable RasterPrint raster,
    List<LaidText> callouts,
    List<LaidDimension> dimensions) {
  /** A flat without callouts. */
  public PlacedFlat(
      FlatSet.Item item, Placement placement, Length target, @Nullable RasterPrint raster) {
    this(item, placement, target, raster, List.of(), List.of());
  }

  /** Copies the list. */
  public PlacedFlat {
    callouts = List.copyOf(callouts);
    dimensions = List.copyOf(dimensions);
  }

  /** This flat with its callouts laid. */
  public PlacedFlat with(List<LaidText> laid) {
    return new PlacedFlat(item, placement, target, raster, laid, dimensions);
  }

  /** This flat with its lines of measure laid. */
  public PlacedFlat measured(List<LaidDimension> laid) {
    return new PlacedFlat(item, placement, target, raster, callouts, laid);
  }

  /** This flat with its caption wrapped at the width of its drawing, where that is wider. */
  public PlacedFlat captioned(Lettering lettering) {
    FlatCaption caption = item.caption().across(ink().toBox().width(), lettering);
    return new PlacedFlat(item.with(caption), placement, target, raster, callouts, dimensions);
  }

  /** The flat. */
  public Flat flat() {
    return item.flat();
  }

  /** Where its ink lies, exactly. */
  public ExactBox ink() {
    return PlacedBoxes.ink(item.flat(), placement);
  }

  /** Ink and caption. */
  public ExactBox footprint() {
    return PlacedBoxes.footprint(item.flat(), placement);
  }

  /** Its ink with the lanes below it, under which its caption stands. */
  public Rect stand() {
    Rect box = ink().toBox();
    double over = item.weight() == null ? 0 : item.weight().overhang().pt();
    double below = item.spots().dimensions().below(item.flat()).pt() + over;
    return new Rect(box.left(), box.top(), box.right(), box.bottom() + below);
  }

  /** Where a point of it lies on the sheet, in points. */
  public PlanePoint spot(String point) {
    return place(Objects.requireNonNull(item.flat().points().get(point), point));
  }

  /** Where a point in drawing units lies on the sheet, in points. */
  public PlanePoint place(PlanePoint at) {
    double scale = placement.scale().doubleValue();
    return new PlanePoint(
        ink().left().doubleValue() + (at.x() - item.flat().ink().left()) * scale,
        ink().top().doubleValue() + (at.y() - item.flat().ink().top()) * scale);
  }

  /** The finest line, lettering and stitch gap as they print. */
  public PrintedDetail printed() {
    Length unit = Length.pt(placement.scale().doubleValue());
    if (raster != null) {
      return raster.fine().printed(unit);
    }
    Drawing drawing = drawing();
    return drawing == null ? FineDetail.NONE.printed(unit) : drawing.fineDetail().printed(unit);
  }

  /** The drawing as it is drawn, its lines as wide as asked; null of a picture of pixels. */
  public @Nullable Drawing drawing() {
    if (!(item.file().picture() instanceof Drawing drawing)) {
      return null;
    }
    LineWeight weight = item.weight();
    return weight == null ? drawing : weight.of(drawing, placement.scale().doubleValue());
  }

  /** The printed width of its outline; null where it has no lines of its own. */
  public @Nullable Length outline() {
    Drawing drawing = drawing();
    OutlineLines lines = drawing == null ? null : drawing.lines();
    return lines == null ? null : Length.pt(lines.width() * placement.scale().doubleValue());
  }

  /** Where its ink lies on the sheet, strokes included. */
  public Rect drawn() {
    LineWeight weight = item.weight();
    Rect paths = ink().toBox();
    return weight == null ? paths : weight.around(paths);
  }

  /**
   * Pixels per printed inch: of a raster, or of the coarsest picture in a drawing; null if it has
   * no pixels.
   */
  public @Nullable EffectiveDensity density() {
    if (raster != null) {
      return raster.density();
    }
    PlacedImage image = coarsest();
    Length unit = Length.pt(placement.scale().doubleValue());
    return image == null
        ? null
        : EffectiveDensity.of(
            image.pixelWidth(),
            unit.times(image.width()),
            image.pixelHeight(),
            unit.times(image.height()));
  }

  /** Whether its pixels are enough. */
  public PrintState state() {
    if (raster != null) {
      return raster.state();
    }
    EffectiveDensity density = density();
    // Pictures in a drawing stay as they are, so that more pixels than are visible are not taken
    // out.
    return density == null || DensityTargets.DEFAULT.state(density) != PrintState.SOFT
        ? PrintState.SCALABLE
        : PrintState.SOFT;
  }

  /** The longest side at which it is just not soft; null if it has no pixels. */
  public @Nullable Length crispSide() {
    return FlatSet.crispSide(item.file().picture(), DensityTargets.DEFAULT);
  }

  private @Nullable PlacedImage coarsest() {
    return item.file().picture() instanceof PdfDrawing page ? page.coarsest() : null;
  }

  /** What keeps the pack from conforming to PDF/A-2; null if this flat does not. */
  public @Nullable String archiveFault() {
    return item.file().picture() instanceof PdfDrawing page ? page.archiveFault() : null;
  }

  /** This flat with other pixels embedded. */
  PlacedFlat with(RasterPrint other) {
    return new PlacedFlat(item, placement, target, other, callouts, dimensions);
  }

  /** Printed length over real length; null where no real length is stated. */
  public @Nullable Double garmentScale() {
    return ScaleNote.garmentScale(placement.scale().doubleValue(), item.flat().unitLength());
  }

  /**
   * What stands in for it where it cannot be seen.
   *
   * @param kind what sort of picture it is
   */
  public String called(String kind) {
    ScaleLine line = item.caption().scale();
    String scale = line == null ? "" : ", " + LanguageMarks.without(line.text(garmentScale()));
    return item.file().caption() + ", " + kind + scale;
  }

  /** Its longest side over what the common scale alone asks for; 1 where it did not grow. */
  public double growth() {
    double asked = Math.max(target.pt(), item.flat().limits().least().pt());
    ExactBox ink = ink();
    double size = Math.max(ink.width().doubleValue(), ink.height().doubleValue());
    return placement.capped() ? 1 : Math.max(1, size / asked);
  }

  /** Its scale against its group's; null without a group. */
  public @Nullable Double ratio() {
    ScaleGroup group = item.flat().group();
    return group == null ? null : group.ratio();
  }
}
