package dev.placket.packs.folder;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Grouping;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.CaptionRoom;
import dev.placket.packs.flats.FlatCaption;
import dev.placket.packs.flats.FlatFile;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.FlatSpots;
import dev.placket.packs.flats.LineWeight;
import dev.placket.packs.flats.ScaleLine;
import dev.placket.packs.flats.ScaleLines;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The flats of a folder, with the sizes, limits, groups and captions that their names give them.
 */
public final class FolderFlats {
  private FolderFlats() {}

  /**
   * The flats of a folder.
   *
   * @param folder the folder, read
   * @param targets when a raster is soft
   * @param allowSoft whether rasters may grow until they are soft
   * @param room how wide captions may be
   * @param lettering the typeface of the captions
   * @throws Refusal naming every caption that cannot be set, and views of one scale whose units
   *     differ
   */
  public static FlatSet of(
      FlatFolder folder,
      DensityTargets targets,
      boolean allowSoft,
      CaptionRoom room,
      Lettering lettering)
      throws Refusal {
    Double ratio = folder.notes().ratio().orElse(null);
    return of(folder, ratio, targets, allowSoft, room, lettering);
  }

  /**
   * The same with another ratio of views.
   *
   * @param ratio the scale of the other views over the front's; null for that of their roles
   */
  public static FlatSet of(
      FlatFolder folder,
      @Nullable Double ratio,
      DensityTargets targets,
      boolean allowSoft,
      CaptionRoom room,
      Lettering lettering)
      throws Refusal {
    List<Grouping.Candidate> candidates =
        folder.flats().stream()
            .map(
                f ->
                    new Grouping.Candidate(
                        f.id(),
                        f.role(),
                        FlatSet.ink(f.picture(), f.role()).height(),
                        FlatSet.unit(f.picture())))
            .toList();
    Map<String, Double> ratios = Grouping.views(candidates);
    if (ratio != null) {
      candidates.stream()
          .filter(c -> c.role() != Role.FRONT)
          .forEach(c -> ratios.computeIfPresent(c.id(), (id, its) -> ratio));
    }
    List<ScaleLines.Member> members = members(folder, ratios);
    Map<String, ScaleLine> scales = ScaleLines.of(members, folder.notes().phrases());
    List<FlatSet.Item> items = new ArrayList<>();
    List<Fault> wrong = new ArrayList<>(unlike(folder, members));
    for (FlatFile file : folder.flats()) {
      try {
        lettering.check(file.caption(), "caption of " + file.name());
      } catch (Refusal e) {
        wrong.addAll(e.faults());
        continue;
      }
      Length unit = folder.unitLength(file).orElse(null);
      Double its = ratios.get(file.id());
      FlatCaption caption =
          FlatCaption.of(
              file.markedCaption(), "", scales.get(file.id()), room.of(file.role()), lettering);
      Limits limits = FlatSet.limits(file.role(), file.picture(), targets, allowSoft);
      LineWeight weight = weight(folder, file);
      Flat flat = flat(file, caption, limits, unit, its, weight, lettering);
      items.add(new FlatSet.Item(file, flat, caption, FlatSpots.NONE, weight));
    }
    if (!wrong.isEmpty()) {
      throw Refusal.input(wrong);
    }
    return new FlatSet(FlatSet.besideFront(items, id -> true), ratios);
  }

  /** The width at which a drawing's outline prints; null as it is drawn. */
  private static @Nullable LineWeight weight(FlatFolder folder, FlatFile file) {
    Length asked = folder.notes().lineWeight(file.id()).orElse(null);
    boolean drawn = file.picture() instanceof Drawing && file.role() != Role.SWATCH;
    OutlineLines lines = drawn ? ((Drawing) file.picture()).lines() : null;
    return asked == null || lines == null ? null : new LineWeight(asked, lines);
  }

  private static List<ScaleLines.Member> members(FlatFolder folder, Map<String, Double> ratios) {
    List<ScaleLines.Member> members = new ArrayList<>();
    for (FlatFile f : folder.flats()) {
      Double ratio = ratios.get(f.id());
      members.add(
          new ScaleLines.Member(
              f.id(),
              f.role(),
              language -> f.caption(),
              ratio == null ? null : Grouping.VIEWS,
              ratio == null ? 1 : ratio,
              false,
              folder.unitLength(f).orElse(null)));
    }
    return members;
  }

  private static List<Fault> unlike(FlatFolder folder, List<ScaleLines.Member> members) {
    return ScaleLines.unlike(members).stream()
        .map(
            u ->
                Fault.content(folder.path().resolve(PackNotes.FILE), u.finding())
                    .remedy("correct unit.mm." + u.other().id())
                    .remedy("correct unit.mm." + u.lead().id()))
        .toList();
  }

  private static Flat flat(
      FlatFile file,
      FlatCaption caption,
      Limits limits,
      @Nullable Length unit,
      @Nullable Double ratio,
      @Nullable LineWeight weight,
      Lettering lettering) {
    Surround below = caption.surround(lettering);
    InkedBox ink =
        weight == null ? FlatSet.ink(file.picture(), file.role()) : weight.lines().geometry();
    Flat flat =
        Flat.of(file.id(), file.role(), ink)
            .withSurround(weight == null ? below : weight.around(below))
            .withWindows(List.of(FlatSheet.FLATS))
            .withLimits(limits)
            .withMayFlow(!file.role().isView());
    flat = unit == null ? flat : flat.withUnitLength(unit);
    return ratio == null ? flat : flat.withGroup(Grouping.VIEWS, ratio);
  }
}
