package dev.placket.packs.flats;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PdfDrawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PlacedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The flats that a folder gives: files with their sizes, limits, groups and captions.
 *
 * @param items one for each file, in the folder's order
 * @param ratios the ratio of each grouped flat, by id
 */
public record FlatSet(List<Item> items, Map<String, Double> ratios) {
  /** The share of the front's greatest size that no other flat needs to be larger than. */
  private static final double BESIDE_FRONT = 0.7;

  /**
   * One flat with what it came from.
   *
   * @param file the picture
   * @param flat what the solver sees
   * @param caption the caption under it
   * @param spots what of it is pointed at
   * @param weight the width of its lines on paper; null as they are drawn
   */
  public record Item(
      FlatFile file, Flat flat, FlatCaption caption, FlatSpots spots, @Nullable LineWeight weight) {
    /** A flat of which nothing is pointed at. */
    public Item(FlatFile file, Flat flat, FlatCaption caption) {
      this(file, flat, caption, FlatSpots.NONE, null);
    }

    /** This item with its caption wrapped otherwise. */
    public Item with(FlatCaption other) {
      return new Item(file, flat, other, spots, weight);
    }

    /** This item as its flat is asked for. */
    public Item with(Flat other) {
      return new Item(file, other, caption, spots, weight);
    }
  }

  /** Copies the list. */
  public FlatSet {
    items = List.copyOf(items);
  }

  /**
   * The flats with least sizes that a front of few pixels leaves room under: held small, it would
   * else be shorter than what it has to lead.
   *
   * @param may whether the least size of the flat of an id may be lowered
   */
  public static List<Item> besideFront(List<Item> items, Predicate<String> may) {
    Length most =
        items.stream()
            .map(Item::flat)
            .filter(f -> f.role() == Role.FRONT)
            .findFirst()
            .map(f -> f.limits().greatest())
            .orElse(null);
    if (most == null) {
      return items;
    }
    List<Item> all = new ArrayList<>();
    for (Item item : items) {
      Flat flat = item.flat;
      Limits its = flat.limits();
      Length least = most.times(BESIDE_FRONT);
      boolean lower = flat.role() != Role.FRONT && its.least().compareTo(least) > 0;
      all.add(
          lower && may.test(flat.id())
              ? item.with(flat.withLimits(new Limits(least, its.greatest())))
              : item);
    }
    return List.copyOf(all);
  }

  /** Some of these flats, as they are asked for on one sheet of several. */
  public FlatSet of(List<Flat> some) {
    List<Item> its = new ArrayList<>();
    for (Flat flat : some) {
      Item item =
          items.stream().filter(i -> i.flat.id().equals(flat.id())).findFirst().orElseThrow();
      its.add(item.with(flat));
    }
    return new FlatSet(its, ratios);
  }

  /** The flats alone, in order. */
  public List<Flat> flats() {
    return items.stream().map(Item::flat).toList();
  }

  /** The caption of each flat by its id. */
  public Map<String, String> captions() {
    Map<String, String> captions = new TreeMap<>();
    items.forEach(i -> captions.put(i.flat.id(), i.file.caption()));
    return captions;
  }

  /** Whether any is a view. */
  public boolean hasViews() {
    return items.stream().anyMatch(i -> i.file.role().isView());
  }

  /** Whether any is no view. */
  public boolean hasDetails() {
    return items.stream().anyMatch(i -> !i.file.role().isView());
  }

  /** Cloth and photographs are shown with their ground, all of them. */
  public static boolean keepsGround(Role role) {
    return role == Role.PHOTO || role == Role.SWATCH;
  }

  /** What is placed of a picture: its ink, or all of it where its ground is kept. */
  public static InkedBox ink(Picture picture, Role role) {
    if (!keepsGround(role)) {
      return picture.inkedBox();
    }
    return picture instanceof RasterPicture raster
        ? InkedBox.ofSize(raster.width(), raster.height())
        : ((Drawing) picture).groundedBox();
  }

  /** What names the unit of a picture, so that scales can be compared; null where it is unknown. */
  public static @Nullable String unit(Picture picture) {
    if (picture instanceof RasterPicture raster) {
      PixelDensity stated = raster.density();
      return stated == null ? null : stated.toString();
    }
    return "drawing unit";
  }

  /** The sizes under which nobody reads a flat on paper (common practice), and the soft limit. */
  public static Limits limits(
      Role role, Picture picture, DensityTargets targets, boolean allowSoft) {
    Length least = leastSize(role);
    Length crisp = crispSide(picture, targets);
    if (crisp != null && !allowSoft) {
      return new Limits(least, crisp.compareTo(least) < 0 ? least : crisp);
    }
    return new Limits(least, null);
  }

  /**
   * The longest side of the ink at which no pixels print soft; null for a picture without pixels.
   */
  public static @Nullable Length crispSide(Picture picture, DensityTargets targets) {
    double longest = picture.inkedBox().longestSide();
    if (picture instanceof RasterPicture) {
      return targets.greatestSide(Math.round(longest));
    }
    PlacedImage image = picture instanceof PdfDrawing page ? page.coarsest() : null;
    return image == null
        ? null
        : targets.greatestSide((long) Math.max(1, Math.floor(image.pixelsPerUnit() * longest)));
  }

  private static Length leastSize(Role role) {
    return Length.mm(
        switch (role) {
          case FRONT, BACK, SIDE, INSIDE -> 40;
          case PHOTO -> 25;
          case ARTWORK -> 20;
          case DETAIL, STEP -> 15;
          case SWATCH -> 10;
        });
  }
}
