package dev.placket.packs.folder;

import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.Captions;
import dev.placket.packs.flats.FlatFile;
import dev.placket.packs.flats.NaturalOrder;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.flats.RoleWords;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A folder of flats: every picture in it read, its role from its name, and what was left alone.
 *
 * @param path the folder
 * @param notes what {@code pack.properties} says
 * @param flats the pictures, views first, otherwise in the order of their names
 * @param leftAlone names of files that are no picture this program reads
 */
public record FlatFolder(Path path, PackNotes notes, List<FlatFile> flats, List<String> leftAlone) {
  /** What Java reads where the bytes of a name are no letters of the locale (U+FFFD). */
  private static final char UNREADABLE = '\uFFFD';

  /** Copies the lists. */
  public FlatFolder {
    flats = List.copyOf(flats);
    leftAlone = List.copyOf(leftAlone);
  }

  /**
   * Reads a folder; subfolders, hidden files and the outputs of earlier runs are passed over.
   *
   * @param reading how pictures are read
   * @throws Refusal naming every file that cannot be used
   */
  public static FlatFolder read(Path folder, Reading reading) throws Refusal {
    OwnOutputs earlier = OwnOutputs.in(folder);
    List<Path> files =
        list(folder).stream().filter(f -> !earlier.has(f.getFileName().toString())).toList();
    List<Path> pictures = files.stream().filter(FlatFolder::isPicture).toList();
    if (pictures.isEmpty()) {
      throw Refusal.input(
          Fault.content(folder, "has no drawings")
              .remedy("add files that are " + PictureReader.formats() + ", as in front.svg"));
    }
    checkNames(pictures);
    List<Fault> wrong = new ArrayList<>();
    PackNotes notes = notes(folder, pictures, wrong);
    List<Named> named = pictures.stream().map(p -> Named.of(p, pictures)).toList();
    checkOneFront(folder, named, wrong);
    List<FlatFile> flats = new ArrayList<>();
    for (Named n : named) {
      Picture picture = picture(n.path, n.worded.role(), reading, wrong);
      if (picture != null && notes != null) {
        flats.add(n.file(notes, named, picture));
      }
    }
    if (!wrong.isEmpty() || notes == null) {
      throw Refusal.input(wrong);
    }
    flats.sort(Comparator.comparing(f -> f.role().isView() ? f.role().ordinal() : 99));
    List<String> other =
        files.stream()
            .filter(f -> !isPicture(f))
            .map(f -> f.getFileName().toString())
            .filter(f -> !f.equals(PackNotes.FILE))
            .toList();
    return new FlatFolder(folder, notes, flats, other);
  }

  /**
   * The real length of a unit of a picture: what its name is given, or, for drawings, what all are
   * given.
   */
  public Optional<Length> unitLength(FlatFile file) {
    return notes.unitLength(stem(file.path()), file.picture() instanceof Drawing);
  }

  private record Named(Path path, String id, String stem, RoleWords.Reading worded) {
    static Named of(Path path, List<Path> all) {
      String stem = FlatFolder.stem(path);
      boolean shared = all.stream().filter(p -> FlatFolder.stem(p).equals(stem)).count() > 1;
      String id = shared ? path.getFileName().toString() : stem;
      return new Named(path, id, stem, RoleWords.read(stem));
    }

    FlatFile file(PackNotes notes, List<Named> all, Picture picture) {
      String caption = notes.caption(stem).orElseGet(() -> Captions.of(worded, roles(all)));
      return new FlatFile(path, id, worded.role(), worded.worded(), caption, picture);
    }

    private static List<Role> roles(List<Named> all) {
      return all.stream().map(n -> n.worded.role()).toList();
    }
  }

  private static @Nullable PackNotes notes(Path folder, List<Path> pictures, List<Fault> wrong) {
    try {
      return PackNotes.read(folder, pictures.stream().map(FlatFolder::stem).toList());
    } catch (Refusal e) {
      wrong.addAll(e.faults());
      return null;
    }
  }

  private static @Nullable Picture picture(
      Path file, Role role, Reading reading, List<Fault> wrong) {
    try {
      return reading.picture(PictureSource.of(file), role);
    } catch (PictureException e) {
      wrong.add(e.fault());
      return null;
    }
  }

  /** A name that Java cannot read would stand on sheets and in fit.json with other letters. */
  private static void checkNames(List<Path> pictures) throws Refusal {
    for (Path picture : pictures) {
      if (picture.getFileName().toString().indexOf(UNREADABLE) >= 0) {
        throw Refusal.input(
            Fault.content(picture, "has letters that this locale cannot represent")
                .remedy("set another, as in LC_ALL=C.UTF-8")
                .remedy("rename the file"));
      }
    }
  }

  private static void checkOneFront(Path folder, List<Named> named, List<Fault> wrong) {
    List<String> fronts =
        named.stream()
            .filter(n -> n.worded.role() == Role.FRONT)
            .map(n -> n.path.getFileName().toString())
            .toList();
    if (fronts.size() > 1) {
      wrong.add(
          Fault.content(
                  folder,
                  "has "
                      + fronts.size()
                      + " fronts, "
                      + String.join(", ", fronts)
                      + ", where a sheet has one")
              .remedy("name the others after what they show, as in side or detail")
              .remedy("move them out"));
    }
  }

  private static List<Path> list(Path folder) throws Refusal {
    if (!Files.isDirectory(folder)) {
      throw Refusal.input(
          Fault.unreadable(folder, "is not a folder").remedy("give the folder with the drawings"));
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(Files::isRegularFile)
          .filter(f -> !f.getFileName().toString().startsWith("."))
          .sorted(Comparator.comparing(f -> f.getFileName().toString(), NaturalOrder.NAMES))
          .toList();
    } catch (IOException e) {
      throw Refusal.input(Fault.unreadable(folder, "cannot be read: " + e.getMessage()));
    }
  }

  private static boolean isPicture(Path file) {
    return PictureReader.isNamedAsPicture(file.getFileName().toString());
  }

  private static String stem(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
