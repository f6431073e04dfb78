package dev.placket.packs.placed;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.page.Art;
import dev.placket.packs.page.Embedded;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.ReadyPicture;
import dev.placket.pictures.prepare.ToPrint;
import dev.placket.pictures.prepare.Weighing;
import dev.placket.pictures.prepare.WeightCurve;
import dev.placket.pictures.prepare.WeightPlan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Writes a pack that keeps its weight: as it is if it holds, else with the rasters at one density
 * between the soft limit and the aim, the highest at which the whole file holds.
 */
public final class KeepWeight {
  /** What was foreseen too light is asked for lighter, by as much, so many times at most. */
  private static final int TRIES = 3;

  private static final int HEAVIEST = 3;

  /** What a picture weighs less with a pixel less a side: a smaller step might change none. */
  private static final double A_PIXEL_LESS = 0.005;

  private final long limit;
  private final DensityTargets targets;
  private final Writer writer;

  /** Makes the file's bytes. */
  @FunctionalInterface
  public interface Writer {
    /** The bytes of a pack with these flats on its sheets. */
    byte[] bytes(List<List<PlacedFlat>> sheets) throws IOException, Refusal;
  }

  /**
   * What was written.
   *
   * @param file its bytes
   * @param sheets the flats of each sheet, with what was embedded of them
   * @param weight what it comes to
   */
  public record Kept(byte[] file, List<List<PlacedFlat>> sheets, PackWeight weight) {}

  /**
   * A size limit for packs.
   *
   * @param limit the maximum size of the file in bytes
   * @param targets the densities that pictures aim at, and below which they are soft
   * @param writer makes the file
   */
  public KeepWeight(long limit, DensityTargets targets, Writer writer) {
    this.limit = limit;
    this.targets = targets;
    this.writer = writer;
  }

  /**
   * Writes a pack, with fewer pixels where it would be over the limit.
   *
   * @throws Refusal as the writer does
   */
  public Kept write(List<List<PlacedFlat>> sheets) throws IOException, Refusal {
    byte[] file = writer.bytes(sheets);
    List<PlacedFlat> rasters = rasters(sheets);
    if (file.length <= limit || rasters.isEmpty()) {
      return new Kept(file, sheets, weight(file, sheets, null));
    }
    double others = file.length - rasters.stream().mapToLong(KeepWeight::bytes).sum();
    List<WeightCurve> curves = rasters.parallelStream().map(this::curve).toList();
    List<List<PlacedFlat>> kept = sheets;
    PackWeight.Lowered lowered = null;
    long aim = limit;
    for (int i = 0; i < TRIES && file.length > limit; i++) {
      WeightPlan plan = WeightPlan.choose(curves, others, aim, targets);
      kept = lowered(sheets, plan);
      file = writer.bytes(kept);
      double most = plan.densities().stream().mapToDouble(d -> d).max().orElse(0);
      lowered = new PackWeight.Lowered(most, Math.round(plan.total()));
      double off = Math.min(1, plan.total() / file.length);
      aim = (long) (aim * off * (1 - A_PIXEL_LESS * (i + 1)));
    }
    return new Kept(file, kept, weight(file, kept, lowered));
  }

  private PackWeight weight(
      byte[] file, List<List<PlacedFlat>> sheets, PackWeight.@Nullable Lowered lowered)
      throws IOException, Refusal {
    List<PackWeight.Heavy> heaviest = file.length > limit ? heaviest(file, sheets) : List.of();
    return new PackWeight(limit, file.length, lowered, heaviest, List.of());
  }

  /** What each flat takes is what the file has less without it: pixels or paths. */
  private List<PackWeight.Heavy> heaviest(byte[] file, List<List<PlacedFlat>> sheets)
      throws IOException, Refusal {
    List<PackWeight.Heavy> all = new ArrayList<>();
    for (int s = 0; s < sheets.size(); s++) {
      for (PlacedFlat flat : sheets.get(s)) {
        List<List<PlacedFlat>> without = new ArrayList<>(sheets);
        without.set(s, sheets.get(s).stream().filter(f -> f != flat).toList());
        long bytes = file.length - writer.bytes(without).length;
        all.add(new PackWeight.Heavy(flat.item().file().name(), bytes));
      }
    }
    all.sort(Comparator.comparingLong(PackWeight.Heavy::bytes).reversed());
    return all.subList(0, Math.min(HEAVIEST, all.size()));
  }

  private static List<PlacedFlat> rasters(List<List<PlacedFlat>> sheets) {
    return sheets.stream().flatMap(List::stream).filter(f -> f.raster() != null).toList();
  }

  private static List<List<PlacedFlat>> lowered(List<List<PlacedFlat>> sheets, WeightPlan plan) {
    List<List<PlacedFlat>> kept = new ArrayList<>();
    int next = 0;
    for (List<PlacedFlat> sheet : sheets) {
      List<PlacedFlat> flats = new ArrayList<>();
      for (PlacedFlat flat : sheet) {
        RasterPrint print = flat.raster();
        flats.add(
            print == null ? flat : flat.with(lowered(flat, print, plan.densities().get(next++))));
      }
      kept.add(flats);
    }
    return kept;
  }

  /** A JPEG stays as it is where fewer pixels would take more, stored without loss. */
  private static RasterPrint lowered(PlacedFlat flat, RasterPrint print, double perInch) {
    RasterPrint lower = print.with(RasterPrint.ready(toPrint(flat), perInch));
    boolean lighter = print.jpeg() == null || bytes(art(lower)) < bytes(art(print));
    return lighter ? lower : print;
  }

  private static Art.Pixels art(RasterPrint print) {
    return new Art.Pixels(print.image(), print.jpeg());
  }

  private WeightCurve curve(PlacedFlat flat) {
    try {
      return Weighing.of(toPrint(flat), targets, KeepWeight::packed);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  private static ToPrint toPrint(PlacedFlat flat) {
    return RasterPrint.toPrint(
        flat.item(), (RasterPicture) flat.item().file().picture(), flat.placement());
  }

  private static long packed(ReadyPicture ready) throws PictureException {
    return bytes(new Art.Pixels(ready.grid().toImage(), null));
  }

  private static long bytes(PlacedFlat flat) {
    RasterPrint print = flat.raster();
    return print == null ? 0 : bytes(art(print));
  }

  private static long bytes(Art.Pixels pixels) {
    try {
      return Embedded.bytes(pixels);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
