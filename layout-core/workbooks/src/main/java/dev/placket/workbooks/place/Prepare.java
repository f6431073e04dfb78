package dev.placket.workbooks.place;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.density.Rate;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.LineWeight;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.RasterPrint;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.StoredJpeg;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.pictures.prepare.ImageRows;
import dev.placket.pictures.prepare.PngWriter;
import dev.placket.workbooks.geometry.Emu;
import dev.placket.workbooks.read.DrawnThing;
import dev.placket.workbooks.refusal.WorkbookSetting;
import dev.placket.workbooks.room.PageRoom;
import java.awt.image.BufferedImage;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Makes pictures of placed flats, with their anchors in whole EMU. */
final class Prepare {
  /** A flat that fills A1; four bytes each. */
  private static final double MOST_PIXELS = 4e7;

  private final PageRoom room;
  private final PrintedScale printed;
  private final DensityTargets targets;

  Prepare(PageRoom room, DensityTargets targets) {
    this.room = room;
    this.printed = new PrintedScale(room.page().percent());
    this.targets = targets;
  }

  /** What a flat is longer than its ink, in printed points: the rest of its last pixel. */
  static double guard(PrintedScale printed, DensityTargets targets) {
    return printed.printedPoints(printed.emuPerPixel(targets.aim()) + 2);
  }

  /**
   * The pictures of all flats.
   *
   * @throws Refusal if the paper is so large that one would have too many pixels
   */
  List<Anchored> all(FlatSet set, List<Flat> flats, Fit fit) throws Refusal {
    for (Flat flat : flats) {
      check(flat, fit.placement(flat.id()));
    }
    double[] atOne = Targets.scales(flats);
    double common = fit.proof().scale().doubleValue();
    return IntStream.range(0, flats.size())
        .parallel()
        .mapToObj(i -> one(set.items().get(i), flats.get(i), fit, atOne[i] * common))
        .toList();
  }

  private Anchored one(FlatSet.Item of, Flat flat, Fit fit, double aimedScale) {
    FlatSet.Item item = of.with(flat);
    Placement at = fit.placement(flat.id());
    Length target = Length.pt(aimedScale * flat.ink().longestSide());
    return item.file().picture() instanceof RasterPicture raster
        ? raster(item, raster, at, target)
        : drawing(item, weighted(item, at), at, target);
  }

  private static Drawing weighted(FlatSet.Item item, Placement at) {
    Drawing drawing = (Drawing) item.file().picture();
    LineWeight weight = item.weight();
    return weight == null ? drawing : weight.of(drawing, at.scale().doubleValue());
  }

  private void check(Flat flat, Placement at) throws Refusal {
    double scale = at.scale().doubleValue();
    double inches = Length.pt(scale).in() * targets.aim();
    double pixels = flat.ink().width() * inches * flat.ink().height() * inches;
    if (pixels > MOST_PIXELS) {
      throw Refusal.input(
          Fault.limit(
                  "",
                  String.format(
                      Locale.ROOT,
                      "the flat %s would be printed %.0f mm long and need %.0f million pixels, the limit is %.0f",
                      flat.id(),
                      Length.pt(scale * flat.ink().longestSide()).mm(),
                      pixels / 1e6,
                      MOST_PIXELS / 1e6))
              .at(Place.worksheet(room.sheet().name()))
              .remedy("set smaller paper for the worksheet")
              .remedy("give a smaller range", WorkbookSetting.WINDOW));
    }
  }

  /** Drawn with a whole number of EMU to the pixel, so that scale and aspect are exact. */
  private Anchored drawing(FlatSet.Item item, Drawing drawing, Placement at, Length target) {
    InkedBox ink = item.flat().ink();
    double over = overhang(item) / at.scale().doubleValue();
    long perPixel = printed.emuPerPixel(targets.aim());
    double pixelsPerUnit = printed.emu(at.scale().doubleValue()) / perPixel;
    int width = pixels((ink.width() + 2 * over) * pixelsPerUnit);
    int height = pixels((ink.height() + 2 * over) * pixelsPerUnit);
    InkedBox part =
        new InkedBox(
            ink.left() - over,
            ink.top() - over,
            ink.left() - over + width / pixelsPerUnit,
            ink.top() - over + height / pixelsPerUnit);
    BufferedImage image = drawing.render(width, part);
    PixelSize size = new PixelSize(image.getWidth(), image.getHeight());
    double density = Emu.PER_INCH / (printed.percent() / 100.0 * perPixel);
    RasterPrint print =
        new RasterPrint(
            size,
            new EffectiveDensity(density, density),
            PrintState.CRISP,
            size,
            image,
            null,
            drawing.fineDetail(),
            1);
    PlacedFlat placed = new PlacedFlat(item, at, target, print);
    return anchored(placed, image, perPixel * size.width(), perPixel * size.height());
  }

  /** How far the strokes of a drawing reach beyond its paths on paper, in points. */
  private static double overhang(FlatSet.Item item) {
    LineWeight weight = item.weight();
    return weight == null ? 0 : weight.overhang().pt();
  }

  private static int pixels(double exact) {
    return (int) Math.max(1, Math.ceil(exact - 1e-9));
  }

  private Anchored raster(FlatSet.Item item, RasterPicture raster, Placement at, Length target) {
    InkedBox ink = item.flat().ink();
    double scale = at.scale().doubleValue();
    Length width = Length.pt(ink.width() * scale);
    Length height = Length.pt(ink.height() * scale);
    RasterPrint print = RasterPrint.of(item, raster, at, target, targets);
    BufferedImage image = print.image();
    // The largest extent of the pixels' own proportions inside the ink's place.
    long common =
        BigInteger.valueOf(image.getWidth())
            .gcd(BigInteger.valueOf(image.getHeight()))
            .longValueExact();
    long across = image.getWidth() / common;
    long down = image.getHeight() / common;
    long times =
        (long)
            Math.floor(Math.min(printed.emu(width.pt()) / across, printed.emu(height.pt()) / down));
    return anchored(
        new PlacedFlat(item, at, target, print),
        image,
        Math.max(1, times) * across,
        Math.max(1, times) * down);
  }

  private Anchored anchored(PlacedFlat placed, BufferedImage image, long width, long height) {
    long perMetre = Math.round((double) image.getWidth() * Emu.PER_METRE / width);
    byte[] png = png(image, PixelDensity.square(Rate.perMetre(Math.max(1, perMetre))));
    StoredJpeg jpeg = placed.raster() == null ? null : placed.raster().jpeg();
    boolean lighter = jpeg != null && jpeg.bytes().length < png.length;
    byte[] content = jpeg != null && lighter ? jpeg.bytes() : png;
    return new Anchored(placed, content, lighter, spot(placed), width, height);
  }

  private static byte[] png(BufferedImage image, PixelDensity density) {
    try {
      return PngWriter.encode(new ImageRows(image), density);
    } catch (PictureException e) {
      throw new IllegalStateException("pixels in memory can be read", e);
    }
  }

  private DrawnThing.Spot spot(PlacedFlat placed) {
    Placement at = placed.placement();
    double over = overhang(placed.item());
    var cells = room.page().cells();
    var columns = room.narrow().columns();
    var rows = room.narrow().rows();
    long firstX = columns.start(cells.left());
    long firstY = rows.start(cells.top());
    long x = firstX + emu(at.left().doubleValue() - over - room.page().left());
    long y = firstY + emu(at.top().doubleValue() - over - room.page().top());
    int column = columns.at(x);
    int row = rows.at(y);
    return new DrawnThing.Spot(column, x - columns.start(column), row, y - rows.start(row));
  }

  private long emu(double printedPoints) {
    return Math.max(0, Math.round(printed.emu(printedPoints)));
  }
}
