package dev.placket.demo.probe;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.NamedRole;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.Missing;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.prepare.Clearing;
import dev.placket.pictures.prepare.FineLines;
import dev.placket.pictures.prepare.ResolvedShare;
import dev.placket.pictures.prepare.ToPrint;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Probes files one after another; what cannot be read leaves a message and does not stop it. */
final class ProbeRun {
  private final Reading reading;
  private final @Nullable Length at;
  private final Progress progress;
  final List<Probed> probed = new ArrayList<>();
  final List<Fault> refused = new ArrayList<>();

  ProbeRun(Reading reading, @Nullable Length at, Progress progress) {
    this.reading = reading;
    this.at = at;
    this.progress = progress;
  }

  void run(List<Path> files) {
    for (int i = 0; i < files.size(); i++) {
      progress.reading(i + 1, files.size(), files.get(i));
      one(files.get(i));
    }
    progress.done();
  }

  private void one(Path file) {
    if (!Files.exists(file)) {
      refused.add(Missing.fault(file));
      return;
    }
    if (Files.isDirectory(file)) {
      refused.add(
          Fault.unreadable(file, "is a folder")
              .remedy("name the pictures in it, as in " + file + "/*.png"));
      return;
    }
    try {
      PictureProbe probe =
          PictureReader.probe(PictureSource.of(file), reading.limits(), reading.typefaces());
      List<PictureNote> notes = new ArrayList<>(probe.notes());
      Probed found = Probed.of(probe, box(file, probe, notes), notes);
      Length length = at;
      probed.add(
          length == null || found.box() == null
              ? found
              : found.at(length, DensityTargets.DEFAULT, detail(file, length)));
    } catch (PictureException e) {
      refused.add(e.fault());
    }
  }

  /** Reads the picture as a whole: what prints is in its paths, or in all of its pixels. */
  private Detail detail(Path file, Length length) throws PictureException {
    Picture picture =
        PictureReader.read(PictureSource.of(file), reading.limits(), reading.typefaces());
    ToPrint what =
        FlatSet.keepsGround(NamedRole.of(file))
            ? ToPrint.whole(picture, length)
            : ToPrint.ink(picture, length, Clearing.NONE);
    Length unit = Length.pt(length.pt() / what.part().longestSide());
    return picture instanceof RasterPicture raster
        ? new Detail(FineLines.of(raster).printed(unit), ResolvedShare.of(raster))
        : new Detail(((Drawing) picture).fineDetail().printed(unit), null);
  }

  private static @Nullable InkedBox box(Path file, PictureProbe probe, List<PictureNote> notes) {
    Role role = NamedRole.of(file);
    if (!FlatSet.keepsGround(role)) {
      return probe.inkedBox();
    }
    PixelSize pixels = probe.pixels();
    if (pixels == null) {
      return probe.groundedBox();
    }
    notes.add(
        PictureNote.plain(
            "by its name it is a "
                + role.name().toLowerCase(Locale.ROOT)
                + ", which keeps its background: the whole picture is placed"));
    return InkedBox.ofSize(pixels.width(), pixels.height());
  }
}
