package dev.placket.packs.run;

import dev.placket.packs.dimensions.DimensionLayout;
import dev.placket.packs.dimensions.MeasureLine;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of measure of a sheet's flats.
 *
 * @param lettering for their codes
 * @param faults takes what cannot be drawn
 */
record LayDimensions(Lettering lettering, List<Fault> faults) {
  List<PlacedFlat> on(List<PlacedFlat> flats, String sheet) {
    List<PlacedFlat> laid = new ArrayList<>();
    for (PlacedFlat flat : flats) {
      List<MeasureLine> its = flat.item().spots().dimensions();
      double scale = flat.placement().scale().doubleValue();
      DimensionLayout.Result result =
          DimensionLayout.lay(
              its,
              flat::spot,
              flat.ink().toBox(),
              its.isEmpty() ? box -> 0 : DarkShare.of(flat),
              scale,
              lettering);
      if (!result.stuck().isEmpty()) {
        faults.add(
            Fault.content(
                    "",
                    "there is no clear place on "
                        + flat.flat().id()
                        + " for the code of the measure "
                        + result.stuck())
                .remedy("move its spots, or set beside")
                .remedy("show fewer measures on this flat")
                .in(sheet));
      }
      laid.add(flat.measured(result.dimensions()));
    }
    return laid;
  }
}
