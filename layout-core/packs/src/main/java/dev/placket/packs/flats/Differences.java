package dev.placket.packs.flats;

import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.Picture;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.fault.Fault;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds and refuses pictures that cannot be drawn as their files say. */
public final class Differences {
  private Differences() {}

  /**
   * Checks pictures that have been read.
   *
   * @throws Refusal naming every difference of every picture, if there is one
   */
  public static void check(Collection<FlatSet.Item> items) throws Refusal {
    Set<Fault> found = new LinkedHashSet<>();
    for (FlatSet.Item item : items) {
      found.addAll(differences(item.file().picture()));
    }
    refuse(List.copyOf(found));
  }

  /** A fault for each way in which a picture is drawn other than its file says. */
  public static List<Fault> differences(Picture picture) {
    return picture.changes().stream().map(note -> fault(picture.name(), note)).toList();
  }

  /**
   * The fault of a picture that is refused for a difference.
   *
   * @param name its file
   */
  public static Fault fault(String name, PictureNote note) {
    return Fault.of(Fault.Kind.DIFFERENCE, name, note.text())
        .remedy("correct the picture")
        .remedy("accept the difference", PackSetting.STRICT);
  }

  /**
   * Refuses where there is a difference.
   *
   * @throws Refusal with all of them
   */
  public static void refuse(List<Fault> differences) throws Refusal {
    if (!differences.isEmpty()) {
      throw Refusal.input(differences);
    }
  }
}
