package dev.placket.demo;

import dev.placket.demo.folder.FlatSet;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.image.FineDetail;
import dev.placket.layout.image.PictureException;
import dev.placket.layout.image.Raster;
import dev.placket.layout.image.prepare.Clearing;
import dev.placket.layout.image.prepare.FineLines;
import dev.placket.layout.image.prepare.Preparing;
import dev.placket.layout.image.prepare.ResolvedShare;
import dev.placket.layout.units.Length;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** Works out what follows from a fit for every flat. */
final class Placing {
  private final DensityTargets targets;

  private Placing(DensityTargets targets) {
    this.targets = targets;
  }

  static List<PlacedFlat> of(FlatSet set, SheetFit.Placed placed, DensityTargets targets) {
    Placing placing = new Placing(targets);
    double[] atOne = Targets.scales(set.flats());
    double common = placed.fit().proof().scale().doubleValue();
    List<PlacedFlat> flats = new ArrayList<>();
    for (int i = 0; i < atOne.length; i++) {
      FlatSet.Item item = set.items().get(i);
      Placement at = placed.fit().placement(item.flat().id());
      Length target = Length.pt(atOne[i] * common * item.flat().ink().longestSide());
      RasterPrint raster =
          item.file().picture() instanceof Raster r ? placing.print(item, r, at, target) : null;
      flats.add(new PlacedFlat(item, at, target, raster));
    }
    return flats;
  }

  private RasterPrint print(FlatSet.Item item, Raster raster, Placement at, Length target) {
    Flat flat = item.flat();
    InkedBox ink = flat.ink();
    double scale = at.scale().doubleValue();
    Length width = Length.pt(ink.width() * scale);
    Length height = Length.pt(ink.height() * scale);
    EffectiveDensity density =
        EffectiveDensity.of(
            (int) Math.round(ink.width()), width, (int) Math.round(ink.height()), height);
    Length side = Length.pt(ink.longestSide() * scale);
    Clearing clearing = FlatSet.keepsGround(flat.role()) ? Clearing.NONE : Clearing.FROM_BORDER;
    BufferedImage image = image(raster, side, clearing);
    // What to ask for is counted at the size it would have, were it not held small.
    double longest = Math.max(target.pt(), ink.longestSide() * scale);
    double wantedScale = longest / ink.longestSide();
    PixelSize wanted =
        targets.wantedPixels(
            Length.pt(raster.width() * wantedScale), Length.pt(raster.height() * wantedScale));
    PixelSize pixels = new PixelSize(raster.width(), raster.height());
    return new RasterPrint(
        pixels, density, targets.state(density), wanted, image, fine(raster), share(raster));
  }

  private static FineDetail fine(Raster raster) {
    try {
      return FineLines.of(raster);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  private static double share(Raster raster) {
    try {
      return ResolvedShare.of(raster);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  private BufferedImage image(Raster raster, Length side, Clearing clearing) {
    try {
      return Preparing.raster(raster, side, targets.heavy(), clearing).grid().toImage();
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }
}
