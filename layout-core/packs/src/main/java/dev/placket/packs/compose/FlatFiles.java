package dev.placket.packs.compose;

import dev.placket.layout.flat.Role;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.OwnOutputs;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.fault.Remedy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The files that a description names: beside it or in folders below, each picture read once. */
final class FlatFiles {
  /** More files are not looked through for the nearest name. */
  private static final int MOST = 2000;

  private final Described described;
  private final Reading reading;
  private final Map<List<Object>, Picture> read = new HashMap<>();

  FlatFiles(Described described, Reading reading) {
    this.described = described;
    this.reading = reading;
  }

  /** The path of a file that is there and inside the folder; null with the slip noted. */
  @Nullable Path file(String name, String path) {
    TextPosition place = described.places().of(path);
    Path folder = described.folder();
    try {
      Path file = folder.resolve(name).normalize();
      if (name.isBlank() || !file.startsWith(folder) || (Files.exists(file) && outside(file))) {
        described
            .faults()
            .add(
                place, "'" + name + "', outside the folder of the description", "a file inside it");
        return null;
      }
      if (Files.isRegularFile(file)) {
        return file;
      }
    } catch (InvalidPathException | IOException e) {
      described.faults().add(place, "'" + name + "', which is no file name", "a file name");
      return null;
    }
    described.faults().unknown(place, "no file", name, known());
    return null;
  }

  private boolean outside(Path file) throws IOException {
    return !file.toRealPath().startsWith(described.folder().toRealPath());
  }

  private List<String> known() {
    Path folder = described.folder();
    Map<Path, OwnOutputs> earlier = new HashMap<>();
    try (Stream<Path> all = Files.walk(folder, 3)) {
      return all.limit(MOST)
          .filter(Files::isRegularFile)
          .map(f -> folder.relativize(f).toString().replace('\\', '/'))
          .filter(f -> f.matches("(?i).*\\.(svg|png|jpe?g|csv|ttf)"))
          .filter(f -> !isOwn(folder.resolve(f), earlier))
          .sorted()
          .limit(40)
          .toList();
    } catch (IOException | java.io.UncheckedIOException e) {
      return List.of();
    }
  }

  private static boolean isOwn(Path file, Map<Path, OwnOutputs> earlier) {
    Path in = file.getParent();
    return in != null
        && earlier.computeIfAbsent(in, OwnOutputs::in).has(String.valueOf(file.getFileName()));
  }

  /** The picture of a flat; null with the slip noted. */
  @Nullable Picture picture(PackFlat flat, String path) {
    Path file = file(flat.file(), path + "/file");
    if (file == null) {
      return null;
    }
    boolean swatch = flat.role() == Role.SWATCH;
    List<Object> key = List.of(file, flat.fills(), flat.lines(), swatch);
    Picture known = read.get(key);
    if (known != null) {
      return known;
    }
    try {
      PictureSource source = PictureSource.of(file);
      if (!flat.fills().isEmpty()) {
        PictureReader.read(source, reading.limits());
        byte[] filled = new Fills(described, path).apply(Files.readAllBytes(file), flat);
        source = PictureSource.of(file.toString(), filled);
      }
      Picture picture = reading.picture(source, flat.role());
      read.put(key, picture);
      return picture;
    } catch (PictureException e) {
      return unusable(path, e.fault().quoted(), e.fault().remedy());
    } catch (IOException e) {
      return unusable(path, String.valueOf(e.getMessage()), Remedy.NONE);
    }
  }

  private @Nullable Picture unusable(String path, String why, Remedy remedy) {
    TextPosition place = described.places().of(path + "/file");
    String found = "a picture that cannot be used: " + why;
    described.faults().add(place, found, "a valid " + PictureReader.formats(), remedy);
    return null;
  }
}
