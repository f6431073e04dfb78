package dev.placket.demo.probe;

import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.folder.NamedRole;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.image.PictureException;
import dev.placket.layout.image.PictureProbe;
import dev.placket.layout.image.PictureReader;
import dev.placket.layout.image.PictureSource;
import dev.placket.layout.image.ReadLimits;
import dev.placket.layout.units.Length;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Probes files one after another; what cannot be read leaves a message and does not stop it. */
final class ProbeRun {
  private final ReadLimits limits;
  private final @Nullable Length at;
  private final Progress progress;
  final List<Probed> probed = new ArrayList<>();
  final List<String> refused = new ArrayList<>();

  ProbeRun(ReadLimits limits, @Nullable Length at, Progress progress) {
    this.limits = limits;
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
    if (Files.isDirectory(file)) {
      refused.add(file + ": is a folder; name the pictures in it, as in " + file + "/*.png");
      return;
    }
    try {
      PictureProbe probe = PictureReader.probe(PictureSource.of(file), limits);
      List<String> notes = new ArrayList<>(probe.notes());
      Probed found = Probed.of(probe, box(file, probe, notes), notes);
      Length length = at;
      probed.add(length == null ? found : found.at(length, DensityTargets.DEFAULT));
    } catch (PictureException e) {
      refused.add(String.valueOf(e.getMessage()));
    }
  }

  private static @Nullable InkedBox box(Path file, PictureProbe probe, List<String> notes) {
    Role role = NamedRole.of(file);
    PixelSize pixels = probe.pixels();
    if (pixels == null || !FlatSet.keepsGround(role)) {
      return probe.inkedBox();
    }
    notes.add(
        "by its name it is a "
            + role.name().toLowerCase(Locale.ROOT)
            + ", which keeps its ground: all of it is placed");
    return InkedBox.ofSize(pixels.width(), pixels.height());
  }
}
