package dev.placket.packs.compose;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackCell;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.page.Art;
import dev.placket.packs.page.Inked;
import dev.placket.packs.text.TextBlock;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PdfDrawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.Clearing;
import dev.placket.pictures.prepare.ReadyPicture;
import dev.placket.pictures.prepare.ToPrint;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts the picture of a cell, as a logo, into the room that its caption leaves: as large as that
 * allows, in its own proportions.
 */
final class CellPicture {
  private final Described described;
  private final FlatFiles files;
  private final DensityTargets targets;
  private final Set<String> notes;

  /**
   * For the cells of a sheet.
   *
   * @param notes takes a line for a picture that prints blurred
   */
  CellPicture(Described described, FlatFiles files, DensityTargets targets, Set<String> notes) {
    this.described = described;
    this.files = files;
    this.targets = targets;
    this.notes = notes;
  }

  /**
   * The picture of a cell.
   *
   * @param below what the caption leaves of the cell
   * @param alternative what it shows, for readers who do not see it
   * @return null where the cell has none, or where it cannot be read, with the slip noted
   */
  @Nullable Inked of(PackCell cell, Rect below, String alternative, String path) {
    String file = cell.picture();
    if (file == null) {
      return null;
    }
    PackFlat flat = PackFlat.of(file, Role.ARTWORK, "");
    FlatFiles.Found found = files.picture(flat, path + "/picture");
    if (found == null) {
      return null;
    }
    Picture picture = found.picture();
    InkedBox ink = FlatSet.ink(picture, Role.ARTWORK);
    double inset = TextBlock.INSET.pt();
    double width = below.width() - 2 * inset;
    double height = below.height() - 2 * inset;
    if (width <= 0 || height <= 0) {
      described
          .faults()
          .add(
              described.places().of(path + "/picture"),
              "a picture in a cell without room for it",
              "a larger cell, or no caption");
      return null;
    }
    double scale = Math.min(width / ink.width(), height / ink.height());
    double wide = ink.width() * scale;
    double left = below.left() + inset + share(cell) * (width - wide);
    double top = below.top() + inset + (height - ink.height() * scale) / 2;
    Rect at = new Rect(left, top, left + wide, top + ink.height() * scale);
    Art art = art(picture, ink, scale, path);
    return new Inked(art, at, alternative, List.of(), List.of(), List.of(), List.of());
  }

  private static double share(PackCell cell) {
    return switch (cell.align()) {
      case LEFT -> 0;
      case CENTRE -> 0.5;
      case RIGHT -> 1;
    };
  }

  private Art art(Picture picture, InkedBox ink, double scale, String path) {
    if (picture instanceof PdfDrawing page) {
      return new Art.PdfPart(page, ink, scale);
    }
    if (picture instanceof Drawing drawing) {
      return new Art.Paths(drawing::paint, ink, scale);
    }
    RasterPicture raster = (RasterPicture) picture;
    Length side = Length.pt(ink.longestSide() * scale);
    EffectiveDensity density =
        EffectiveDensity.of(
            (int) Math.round(ink.width()),
            Length.pt(ink.width() * scale),
            (int) Math.round(ink.height()),
            Length.pt(ink.height() * scale));
    if (targets.state(density) == PrintState.SOFT) {
      notes.add(
          String.format(
              Locale.ROOT,
              "line %d: %s prints at %.0f px/in in its cell: it will look blurred.",
              described.places().of(path + "/picture").line(),
              raster.name(),
              72 / scale));
    }
    try {
      double most = targets.mostPixels(side, side).width() / side.in();
      ReadyPicture ready = ToPrint.ink(raster, side, Clearing.FROM_BORDER).ready(most);
      return new Art.Pixels(ready.grid().toImage(), ready.jpeg());
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }
}
