package dev.placket.demo.probe;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.Differences;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.prepare.ResolvedShare;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One file with what its picture comes to in print.
 *
 * @param probe what is known of it
 * @param box what is placed of it: its ink, or all of it where its ground is kept; null if blank
 * @param at what it comes to at the length asked for, or null
 * @param notes what to say of it
 */
record Probed(
    PictureProbe probe, @Nullable InkedBox box, @Nullable Printed at, List<PictureNote> notes) {
  /**
   * A picture at a printed size.
   *
   * @param longest the longer side of its box
   * @param density pixels per printed inch, or null of a drawing
   * @param state what that means for the eye
   * @param wanted the pixels to ask for, for the whole picture
   * @param detail what of it can be seen
   */
  record Printed(
      Length longest,
      @Nullable EffectiveDensity density,
      PrintState state,
      PixelSize wanted,
      Detail detail) {
    /** The density that is really resolved; null of a drawing. */
    @Nullable EffectiveDensity resolved() {
      Double share = detail.resolvedShare();
      return density == null || share == null ? null : ResolvedShare.resolved(density, share);
    }
  }

  Probed {
    notes = List.copyOf(notes);
  }

  /** A fault for each way in which it is drawn other than its file says. */
  List<Fault> differences() {
    return notes.stream()
        .filter(PictureNote::changesPicture)
        .map(note -> Differences.fault(probe.name(), note))
        .toList();
  }

  static Probed of(PictureProbe probe, @Nullable InkedBox box, List<PictureNote> notes) {
    return new Probed(probe, box, null, notes);
  }

  /** The same, with the longer side of its box printed at a length. */
  Probed at(Length longest, DensityTargets targets, Detail detail) {
    InkedBox b = box;
    return b == null ? this : new Probed(probe, b, printed(b, longest, targets, detail), notes);
  }

  private Printed printed(InkedBox b, Length longest, DensityTargets targets, Detail detail) {
    double width = b.width() * probe.pixelAspect();
    double perUnit = longest.pt() / Math.max(width, b.height());
    Length across = Length.pt(wholeWidth() * probe.pixelAspect() * perUnit);
    Length down = Length.pt(wholeHeight() * perUnit);
    PixelSize wanted = targets.wantedPixels(across, down);
    if (probe.pixels() == null) {
      return new Printed(longest, null, PrintState.SCALABLE, wanted, detail);
    }
    EffectiveDensity density =
        EffectiveDensity.of(
            (int) Math.round(b.width()),
            Length.pt(width * perUnit),
            (int) Math.round(b.height()),
            Length.pt(b.height() * perUnit));
    Double share = detail.resolvedShare();
    PrintState state = targets.state(ResolvedShare.judged(density, share == null ? 1 : share));
    return new Printed(longest, density, state, wanted, detail);
  }

  private double wholeWidth() {
    PixelSize p = probe.pixels();
    ViewBox v = probe.viewBox();
    return p != null ? p.width() : v != null ? v.width() : 1;
  }

  private double wholeHeight() {
    PixelSize p = probe.pixels();
    ViewBox v = probe.viewBox();
    return p != null ? p.height() : v != null ? v.height() : 1;
  }
}
