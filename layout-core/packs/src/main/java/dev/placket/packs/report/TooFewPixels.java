package dev.placket.packs.report;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Requirement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.refusal.PackSetting;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Names the pictures whose few pixels are why there is no room. */
final class TooFewPixels {
  private TooFewPixels() {}

  /**
   * A fault for each such picture, with the way out. Empty unless the flats in conflict have room
   * once they may print larger than their pixels allow; nobody exports a picture anew in vain.
   */
  static List<Fault> faults(FitRequest request, Conflict conflict, FlatSet flats, Units units) {
    Set<String> limited = new LinkedHashSet<>();
    List<Fault> faults = new ArrayList<>();
    List<Flat> inConflict = inConflict(request, conflict);
    for (Flat flat : inConflict) {
      for (FlatSet.Item item : flats.items()) {
        Length greatest = flat.limits().greatest();
        if (greatest != null
            && item.flat().id().equals(flat.id())
            && item.file().picture() instanceof RasterPicture raster
            && byPixels(flat, raster)) {
          limited.add(flat.id());
          faults.add(fault(item.file().name(), raster, units.length(greatest)));
        }
      }
    }
    return limited.isEmpty() || !haveRoom(request, inConflict, limited) ? List.of() : faults;
  }

  private static Fault fault(String file, RasterPicture raster, String greatest) {
    String found =
        "its " + raster.width() + " × " + raster.height() + " pixels limit it to " + greatest;
    return Fault.of(Fault.Kind.NO_ROOM, file, found)
        .remedy("export it with more pixels")
        .remedy("let it print blurred", PackSetting.ALLOW_SOFT);
  }

  private static List<Flat> inConflict(FitRequest request, Conflict conflict) {
    List<String> named = new ArrayList<>();
    for (Requirement r : conflict.requirements()) {
      if (r.kind() == Requirement.Kind.LEAST_SIZE) {
        named.addAll(r.of());
      }
    }
    return named.isEmpty()
        ? request.flats()
        : request.flats().stream().filter(f -> named.contains(f.id())).toList();
  }

  /** Whether its greatest size comes from its pixels, not from a description. */
  private static boolean byPixels(Flat flat, RasterPicture raster) {
    Limits usual = FlatSet.limits(flat.role(), raster, DensityTargets.DEFAULT, false);
    Length crisp = DensityTargets.DEFAULT.greatestSide(Math.round(raster.inkedBox().longestSide()));
    Limits its = flat.limits();
    boolean raised = its.least().equals(its.greatest()) && crisp.compareTo(its.least()) < 0;
    return raised || its.greatest() != null && its.greatest().equals(usual.greatest());
  }

  private static boolean haveRoom(FitRequest request, List<Flat> flats, Set<String> limited) {
    List<Flat> freed = new ArrayList<>();
    for (Flat flat : flats) {
      boolean free = limited.contains(flat.id());
      freed.add(free ? flat.withLimits(new Limits(flat.limits().least(), null)) : flat);
    }
    FitRequest free =
        new FitRequest(
            request.sheet(),
            freed,
            request.spacing(),
            request.rules(),
            Order.NONE,
            false,
            request.budget());
    return Planner.attempt(free) instanceof Fit;
  }
}
