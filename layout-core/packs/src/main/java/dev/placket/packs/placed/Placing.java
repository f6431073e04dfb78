package dev.placket.packs.placed;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatSet;
import dev.placket.pictures.RasterPicture;
import java.util.ArrayList;
import java.util.List;

/** Works out what follows from a fit for every flat. */
public final class Placing {
  private Placing() {}

  /** The flats of a fit in the order of the set, with their pixels as placed. */
  public static List<PlacedFlat> of(FlatSet set, Fit fit, DensityTargets targets) {
    double[] atOne = Targets.scales(set.flats());
    double common = fit.proof().scale().doubleValue();
    List<PlacedFlat> flats = new ArrayList<>();
    for (int i = 0; i < atOne.length; i++) {
      FlatSet.Item item = set.items().get(i);
      Placement at = fit.placement(item.flat().id());
      Length target = Length.pt(atOne[i] * common * item.flat().ink().longestSide());
      RasterPrint raster =
          item.file().picture() instanceof RasterPicture r
              ? RasterPrint.of(item, r, at, target, targets)
              : null;
      flats.add(new PlacedFlat(item, at, target, raster));
    }
    return flats;
  }
}
