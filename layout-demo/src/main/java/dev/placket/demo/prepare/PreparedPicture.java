package dev.placket.demo.prepare;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.packs.flats.Differences;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PrintedDetail;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.prepare.ResolvedShare;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One prepared picture.
 *
 * @param job the job
 * @param bytesBefore of the source
 * @param bytesAfter of the ready copy
 * @param before pixels of the source; null for a drawing
 * @param inkPixels pixels along the longer side of its ink; drawing units for a drawing
 * @param after pixels of the ready copy
 * @param density pixels per printed inch of the ready copy
 * @param cleared whether its background became transparent
 * @param coloured whether that background was a colour
 * @param fewer whether the number of colours was reduced
 * @param printed the finest things of it as they print
 * @param resolved the share of its pixel density that the source resolves, at most 1
 * @param notes what a designer should know about how the source was read
 */
record PreparedPicture(
    Job job,
    long bytesBefore,
    long bytesAfter,
    @Nullable PixelSize before,
    double inkPixels,
    PixelSize after,
    EffectiveDensity density,
    boolean cleared,
    boolean coloured,
    boolean fewer,
    PrintedDetail printed,
    double resolved,
    List<PictureNote> notes) {
  /** Copies the list. */
  PreparedPicture {
    notes = List.copyOf(notes);
  }

  /** A fault for each way in which the copy shows other than the source says. */
  List<Fault> differences() {
    return notes.stream()
        .filter(PictureNote::changesPicture)
        .map(note -> Differences.fault(job.file().toString(), note))
        .toList();
  }

  /** Pixels per printed inch that the source had for its ink; that of the copy for a drawing. */
  double sourceDensity() {
    return before == null ? density.least() : inkPixels / job.longest().in();
  }

  /** What the copy is at its size: by the detail that it carries where the source was enlarged. */
  PrintState state(DensityTargets targets) {
    double detail = resolved * sourceDensity();
    boolean enlarged = resolved < ResolvedShare.ENLARGED && detail < density.least();
    return targets.state(enlarged ? new EffectiveDensity(detail, detail) : density);
  }
}
