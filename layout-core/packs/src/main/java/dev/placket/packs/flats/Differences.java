package dev.placket.packs.flats;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureNote;
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
    Set<String> found = new LinkedHashSet<>();
    for (FlatSet.Item item : items) {
      found.addAll(differences(item.file().picture()));
    }
    refuse(List.copyOf(found));
  }

  /** One message for each way in which a picture is drawn other than its file says. */
  public static List<String> differences(Picture picture) {
    return picture.changes().stream().map(note -> message(picture.name(), note)).toList();
  }

  /** What is said where a picture is refused for a difference. */
  public static String message(String name, PictureNote note) {
    return name + ": " + note.text() + " (refused by --strict).";
  }

  /**
   * Refuses where there is a message.
   *
   * @throws Refusal with all of them
   */
  public static void refuse(List<String> differences) throws Refusal {
    if (!differences.isEmpty()) {
      throw Refusal.input(differences);
    }
  }
}
