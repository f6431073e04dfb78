package dev.placket.packs.report;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.ScaleNote;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.RasterPrint;
import dev.placket.pictures.Picture;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.prepare.ResolvedShare;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One placed flat in words, the same on a terminal and on the report page.
 *
 * @param flat the flat
 * @param state whether its pixels are enough
 * @param size printed width and height
 * @param scale the garment scale, or that there is none
 * @param density pixels per printed inch, of a drawing those of its coarsest picture; {@code -} for
 *     paths alone
 * @param wanted the pixels to ask for if it is soft, limited in size or heavy; otherwise empty
 * @param changes how it is drawn other than its file says, each a clause
 * @param remarks what else is worth knowing, each a clause
 */
public record FlatRow(
    PlacedFlat flat,
    PrintState state,
    String size,
    String scale,
    String density,
    String wanted,
    List<String> changes,
    List<String> remarks) {
  /** The beginning of a line that reports a difference between a picture and its file. */
  public static final String CHANGED = "Not as in the file: ";

  /** Sizes are the same within this. */
  private static final double SAME = 1e-6;

  /** Copies the lists. */
  public FlatRow {
    changes = List.copyOf(changes);
    remarks = List.copyOf(remarks);
  }

  /** Puts a placed flat into words. */
  public static FlatRow of(PlacedFlat flat, ReportOptions reporting) {
    Units units = reporting.units();
    RasterPrint raster = flat.raster();
    EffectiveDensity density = flat.density();
    Picture picture = flat.item().file().picture();
    List<String> remarks = new ArrayList<>();
    picture.notes().stream()
        .filter(note -> !note.changesPicture())
        .forEach(note -> remarks.add(note.text()));
    String wanted = "";
    if (raster != null) {
      wanted = asks(flat, raster) ? Figures.pixels(raster.wanted()) : "";
      remarks.addAll(pixels(flat, raster, units));
    } else if (flat.state() == PrintState.SOFT) {
      remarks.add("a picture in it will look blurred; export it with more pixels");
    } else if (heldCrisp(flat)) {
      remarks.add("limited in size to keep the pictures in it crisp");
    } else if (held(flat) || flat.placement().capped()) {
      remarks.add(stated(flat, units));
    }
    remarks.addAll(FineWords.of(flat.printed(), reporting.limits(), units));
    return new FlatRow(
        flat,
        flat.state(),
        units.size(flat.ink().width().doubleValue(), flat.ink().height().doubleValue()),
        ScaleNote.scale(flat.garmentScale()),
        density == null ? "-" : Figures.fixed(density.least(), 0),
        wanted,
        picture.changes().stream().map(PictureNote::text).toList(),
        remarks);
  }

  /** What it is called on the sheet. */
  public String caption() {
    return flat.item().file().caption();
  }

  /** The name of its file. */
  public String file() {
    return flat.item().file().name();
  }

  /** What it is to the sheet. */
  public String role() {
    return flat.flat().role().name().toLowerCase(Locale.ROOT);
  }

  /** Whether its size is limited so that it stays crisp. */
  public boolean heldCrisp() {
    return heldCrisp(flat);
  }

  /** Whether it was enlarged before export, so that not all its pixels carry detail. */
  public boolean enlarged() {
    RasterPrint raster = flat.raster();
    return raster != null && raster.resolvedShare() < ResolvedShare.ENLARGED;
  }

  private static boolean asks(PlacedFlat flat, RasterPrint raster) {
    return raster.state() != PrintState.CRISP || heldCrisp(flat);
  }

  private static List<String> pixels(PlacedFlat flat, RasterPrint raster, Units units) {
    List<String> said = new ArrayList<>();
    String ask = "ask for " + Figures.pixels(raster.wanted()) + " pixels";
    if (raster.state() == PrintState.SOFT) {
      said.add("it will look blurred; " + ask);
    } else if (heldCrisp(flat)) {
      said.add("limited in size to stay crisp; to print it larger, " + ask);
    } else if (held(flat) || flat.placement().capped()) {
      said.add(stated(flat, units));
    }
    if (raster.state() == PrintState.HEAVY) {
      PixelSize kept = new PixelSize(raster.image().getWidth(), raster.image().getHeight());
      String embedded = Figures.pixels(kept);
      said.add("more pixels than are visible, reduced to " + embedded + "; next time " + ask);
    }
    if (raster.resolvedShare() < ResolvedShare.ENLARGED) {
      double detail = ResolvedShare.resolved(raster.density(), raster.resolvedShare()).least();
      said.add(
          "enlarged before export: of "
              + Figures.fixed(raster.density().least(), 0)
              + " pixels per inch, only about "
              + Figures.fixed(detail, 0)
              + " carry detail");
    }
    return said;
  }

  /** By the description, at its real size, or with its group on another sheet. */
  private static boolean held(PlacedFlat flat) {
    return flat.flat().held().scale() != null;
  }

  private static String stated(PlacedFlat flat, Units units) {
    if (held(flat)) {
      return "fixed at this scale";
    }
    Length greatest = flat.flat().limits().greatest();
    return greatest == null
        ? "limited with its scale group"
        : "limited to the maximum size set for it, " + units.length(greatest);
  }

  /** At the largest size at which it is crisp, rather than at a size stated for it. */
  private static boolean heldCrisp(PlacedFlat flat) {
    Length greatest = flat.flat().limits().greatest();
    Length crisp = flat.crispSide();
    return crisp != null
        && greatest != null
        && flat.placement().capped()
        && greatest.pt() >= crisp.pt() * (1 - SAME);
  }
}
