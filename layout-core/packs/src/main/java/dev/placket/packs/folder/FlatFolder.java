package dev.placket.packs.folder;

import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatFile;
import dev.placket.packs.flats.NaturalOrder;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureReader;
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
    List<FolderPart> parts = FolderPart.all(pictures, reading, wrong);
    PackNotes notes = notes(folder, parts, wrong);
    if (notes != null) {
      parts = parts.stream().map(p -> p.with(notes)).toList();
      checkOneFront(folder, parts, wrong);
    }
    List<FlatFile> flats = new ArrayList<>();
    for (FolderPart part : parts) {
      Picture picture = part.read(reading, wrong);
      if (picture != null && notes != null) {
        flats.add(part.file(notes, parts, picture));
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
            .filter(f -> !f.equals(PackNotes.FILE) && !notes.names(f))
            .toList();
    return new FlatFolder(folder, notes, flats, other);
  }

  /**
   * The real length of a unit of a picture: what its name is given, or, for drawings, what all are
   * given.
   */
  public Optional<Length> unitLength(FlatFile file) {
    return notes.unitLength(
        FolderPart.stem(file.path(), file.part()), file.picture() instanceof Drawing);
  }

  private static @Nullable PackNotes notes(Path folder, List<FolderPart> parts, List<Fault> wrong) {
    try {
      return PackNotes.read(folder, parts.stream().map(FolderPart::stem).toList());
    } catch (Refusal e) {
      wrong.addAll(e.faults());
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

  private static void checkOneFront(Path folder, List<FolderPart> parts, List<Fault> wrong) {
    List<String> fronts =
        parts.stream().filter(p -> p.role() == Role.FRONT).map(FolderPart::name).toList();
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
              .remedy("give them another role with role.NAME in " + PackNotes.FILE)
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
}
