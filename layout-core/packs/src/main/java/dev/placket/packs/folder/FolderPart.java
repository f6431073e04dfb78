package dev.placket.packs.folder;

import dev.placket.layout.flat.Role;
import dev.placket.packs.flats.Captions;
import dev.placket.packs.flats.FlatFile;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.flats.RoleWords;
import dev.placket.packs.language.Phrases;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureFile;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PicturePart;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.fault.Fault;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A drawing of a folder before it is read: a file, or a part of one, with what its names say.
 *
 * @param path where the file lies
 * @param file the file, open
 * @param part which drawing of it
 * @param id what the sheet calls it
 * @param stem what {@code pack.properties} calls it
 * @param words what its name says
 * @param role what it is to the sheet
 * @param because what gave the role; null if nothing did
 */
record FolderPart(
    Path path,
    PictureFile file,
    PicturePart part,
    String id,
    String stem,
    RoleWords.Reading words,
    Role role,
    @Nullable String because) {
  /** All drawings of these files, in their order. */
  static List<FolderPart> all(List<Path> pictures, Reading reading, List<Fault> wrong) {
    List<FolderPart> all = new ArrayList<>();
    for (Path path : pictures) {
      try {
        PictureFile file = reading.open(PictureSource.of(path));
        FileParts.of(file).forEach(part -> all.add(of(path, file, part)));
      } catch (PictureException e) {
        wrong.add(e.fault());
      }
    }
    List<String> stems = all.stream().map(FolderPart::stem).toList();
    return all.stream().map(p -> p.apart(Collections.frequency(stems, p.stem) > 1)).toList();
  }

  private static FolderPart of(Path path, PictureFile file, PicturePart part) {
    String stem = stem(path, part);
    RoleWords.Reading words = words(path, part);
    return new FolderPart(path, file, part, stem, stem, words, words.role(), words.word());
  }

  /** What its own name says, where its file has several; else that of the file. */
  private static RoleWords.Reading words(Path path, PicturePart part) {
    if (!part.isWhole()) {
      boolean named = part.kind() != PicturePart.Kind.PAGE || part.title() != null;
      return RoleWords.read(named ? part.called() : "");
    }
    RoleWords.Reading ofFile = RoleWords.read(stem(path));
    RoleWords.Reading ofPart = RoleWords.read(part.called());
    return ofFile.worded() || !ofPart.worded() ? ofFile : ofPart;
  }

  private FolderPart apart(boolean shared) {
    String own = shared ? name() : stem;
    return new FolderPart(path, file, part, own, stem, words, role, because);
  }

  /** The same with the role that {@code pack.properties} gives it. */
  FolderPart with(PackNotes notes) {
    return notes
        .role(stem)
        .map(
            stated ->
                new FolderPart(path, file, part, id, stem, words, stated, PackNotes.ROLE + stem))
        .orElse(this);
  }

  /** Its content; null with a message where it cannot be used. */
  @Nullable Picture read(Reading reading, List<Fault> wrong) {
    try {
      return file.read(part, role == Role.SWATCH, Set.of());
    } catch (PictureException e) {
      wrong.add(e.fault());
      return null;
    }
  }

  FlatFile file(PackNotes notes, List<FolderPart> all, Picture picture) {
    List<Role> roles = all.stream().map(FolderPart::role).toList();
    Phrases phrases = notes.phrases();
    String caption =
        notes
            .caption(stem)
            .map(phrases::beside)
            .orElseGet(
                () -> {
                  boolean own = role == words.role();
                  List<String> rest = own ? words.rest() : List.of();
                  return Captions.of(role, rest, roles, own && words.bothViews(), phrases);
                });
    return new FlatFile(
        path, part, List.of(), picture.digest(), id, role, because, caption, picture);
  }

  /** The name of the file, with the part. */
  String name() {
    String file = path.getFileName().toString();
    return part.isWhole() ? file : file + "#" + part.key();
  }

  /**
   * What {@code pack.properties} calls a drawing: a file without its ending, a part by its title.
   */
  static String stem(Path path, PicturePart part) {
    if (part.isWhole()) {
      return stem(path);
    }
    boolean number = part.kind() == PicturePart.Kind.PAGE && part.title() == null;
    return number
        ? stem(path) + "-" + part.key()
        : part.called().replaceAll("[^\\p{L}\\p{N}\\p{M}]+", "-").replaceAll("^-|-$", "");
  }

  private static String stem(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
