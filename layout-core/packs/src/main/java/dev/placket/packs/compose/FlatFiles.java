package dev.placket.packs.compose;

import dev.placket.layout.flat.Role;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.OwnOutputs;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureFile;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PicturePart;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.fault.Remedy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The files that a description names: beside it or in folders below, each picture read once. */
final class FlatFiles {
  /** More files are not looked through for the nearest name. */
  private static final int MOST = 2000;

  private final Described described;
  private final Reading reading;
  private final Map<List<Object>, Found> read = new HashMap<>();
  private final List<String> notes = new ArrayList<>();
  private final Map<Path, PictureFile> open = new HashMap<>();

  FlatFiles(Described described, Reading reading) {
    this.described = described;
    this.reading = reading;
  }

  /** Notes on colours that were filled in with too little contrast. */
  List<String> notes() {
    return List.copyOf(notes);
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
          .filter(f -> f.matches("(?i).*\\.(svg|pdf|png|jpe?g|csv|ttf)"))
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

  /**
   * A picture with where it was found.
   *
   * @param file its file, as the description names it
   * @param part which drawing of the file it is
   * @param digest SHA-256 of the file before its areas are filled
   * @param picture its content
   */
  record Found(Path file, PicturePart part, String digest, Picture picture) {}

  /** The picture of a flat; null with the slip noted. */
  @Nullable Found picture(PackFlat flat, String path) {
    Named named = named(flat);
    Path file = file(named.file, path + "/file");
    if (file == null) {
      return null;
    }
    boolean swatch = flat.role() == Role.SWATCH;
    List<Object> key =
        List.of(
            flat.file(),
            flat.colouring(),
            Set.copyOf(flat.hidden()),
            swatch,
            Set.copyOf(flat.layers()));
    Found known = read.get(key);
    if (known != null) {
      return known;
    }
    try {
      Found found = read(flat, path, file, named.part);
      read.put(key, found);
      return found;
    } catch (PictureException e) {
      return unusable(path, e.fault().quoted(), e.fault().remedy());
    } catch (IOException e) {
      return unusable(path, String.valueOf(e.getMessage()), Remedy.NONE);
    }
  }

  /** Checks that the file of a flat is there; notes the slip if not. */
  void check(PackFlat flat, String path) {
    file(named(flat).file, path + "/file");
  }

  /** The names of the parts of a drawing; none, with the slip noted, where it has none. */
  Set<String> parts(PackFlat flat, String path) {
    Path file = file(named(flat).file, path + "/file");
    if (file == null) {
      return Set.of();
    }
    try {
      PictureReader.read(PictureSource.of(file), reading.limits());
      Set<String> names = Fills.names(Files.readAllBytes(file));
      if (!names.isEmpty()) {
        return names;
      }
    } catch (PictureException e) {
      unusable(path, e.fault().quoted(), e.fault().remedy());
      return Set.of();
    } catch (IOException e) {
      // Answered below: it is no SVG.
    }
    TextPosition place = described.places().of(path + "/file");
    described
        .faults()
        .add(place, "a picture without named areas", "an SVG drawing whose areas have ids");
    return Set.of();
  }

  /** The width of the lines that a flat names as its outline; null with the slip noted. */
  @Nullable Double outline(PackFlat flat, String path) {
    String name = String.valueOf(flat.outline());
    Named named = named(flat);
    Path file = file(named.file, path + "/file");
    if (file == null) {
      return null;
    }
    TextPosition place = described.places().of(path + "/outline");
    try {
      byte[] svg = Files.readAllBytes(file);
      byte[] only = Fills.only(svg, name);
      if (only == null) {
        described.faults().unknown(place, "no part of the drawing named", name, Fills.names(svg));
        return null;
      }
      PictureFile from = reading.open(PictureSource.of(file.toString(), only));
      PicturePart part = named.part == null ? from.whole() : from.part(named.part);
      Picture picture = from.read(part, false, Set.copyOf(flat.layers()));
      OutlineLines lines = picture instanceof Drawing drawing ? drawing.lines() : null;
      if (lines != null) {
        return lines.width();
      }
      described
          .faults()
          .add(place, "the outline '" + name + "' without lines", "parts with strokes");
    } catch (PictureException e) {
      described
          .faults()
          .add(place, "the outline '" + name + "' without lines", "parts with strokes");
    } catch (IOException e) {
      described
          .faults()
          .add(place, "an outline in a picture without named parts", "an SVG drawing");
    }
    return null;
  }

  /** A file and the part of it that is named behind a number sign; null for all of it. */
  private record Named(String file, @Nullable String part) {}

  private Named named(PackFlat flat) {
    String name = flat.file();
    int mark = name.lastIndexOf('#');
    if (mark <= 0 || isFile(name)) {
      return new Named(name, null);
    }
    return new Named(name.substring(0, mark), name.substring(mark + 1));
  }

  /** A file may have the sign in its name. */
  private boolean isFile(String name) {
    try {
      return Files.isRegularFile(described.folder().resolve(name));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private Found read(PackFlat flat, String path, Path file, @Nullable String part)
      throws PictureException, IOException {
    PictureFile from = isAsDrawn(flat) ? open(file) : filled(flat, path, file);
    PicturePart its = part == null ? from.whole() : from.part(part);
    for (String layer : flat.layers()) {
      if (!from.layers().contains(layer)) {
        TextPosition place = described.places().of(path + "/layers");
        described.faults().unknown(place, "no layer of the file named", layer, from.layers());
      }
    }
    Set<String> layers = Set.copyOf(flat.layers());
    Picture picture = from.read(its, flat.role() == Role.SWATCH, layers);
    String digest = isAsDrawn(flat) ? picture.digest() : digest(file);
    return new Found(file, its, digest, picture);
  }

  private static boolean isAsDrawn(PackFlat flat) {
    return flat.colouring().fills().isEmpty() && flat.hidden().isEmpty();
  }

  private String digest(Path file) throws PictureException, IOException {
    return PictureReader.read(PictureSource.of(file), reading.limits()).digest();
  }

  private PictureFile filled(PackFlat flat, String path, Path file)
      throws PictureException, IOException {
    PictureSource source = PictureSource.of(file);
    PictureReader.read(source, reading.limits());
    byte[] filled = new Fills(described, path, notes).apply(Files.readAllBytes(file), flat);
    return reading.open(PictureSource.of(file.toString(), filled));
  }

  private PictureFile open(Path file) throws PictureException {
    PictureFile known = open.get(file);
    if (known == null) {
      known = reading.open(PictureSource.of(file));
      open.put(file, known);
    }
    return known;
  }

  private @Nullable Found unusable(String path, String why, Remedy remedy) {
    TextPosition place = described.places().of(path + "/file");
    String found = "a picture that cannot be used: " + why;
    described.faults().add(place, found, "a valid " + PictureReader.formats(), remedy);
    return null;
  }
}
