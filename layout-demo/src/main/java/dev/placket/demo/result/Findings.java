package dev.placket.demo.result;

import dev.placket.demo.PackWeight;
import dev.placket.demo.folder.FlatFile;
import dev.placket.demo.folder.FlatFolder;
import dev.placket.demo.folder.FlatSet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What a run found out: the report and the report page say it, each in its own way.
 *
 * @param title what was laid out
 * @param source the folder or description that was read
 * @param read what is to be known of what was read
 * @param unnamed names of files whose names say no role
 * @param sheets what came of each sheet
 * @param closing what is to be known of the whole
 * @param weight what the file weighs; null where it keeps none
 */
public record Findings(
    String title,
    Path source,
    List<String> read,
    List<String> unnamed,
    List<SheetResult> sheets,
    List<String> closing,
    @Nullable PackWeight weight) {
  /** A share under this is not worth a word. */
  static final double LEAST_SHOWN = 0.0005;

  /** Copies the lists. */
  public Findings {
    read = List.copyOf(read);
    unnamed = List.copyOf(unnamed);
    sheets = List.copyOf(sheets);
    closing = List.copyOf(closing);
  }

  /**
   * Of a folder.
   *
   * @param title what was laid out
   * @param folder what was read
   * @param set how it was grouped
   * @param sheets what came of it
   * @param dividePrice the part of the scale that the line between the windows cost
   * @param weight what the file weighs
   */
  public static Findings ofFolder(
      String title,
      FlatFolder folder,
      FlatSet set,
      List<SheetResult> sheets,
      double dividePrice,
      PackWeight weight) {
    List<String> read = new ArrayList<>(List.of(roles(folder)));
    read.addAll(grouped(set));
    read.addAll(read(folder));
    List<String> closing = new ArrayList<>();
    if (dividePrice >= LEAST_SHOWN) {
      closing.add(
          "The line between the windows stands where all are in line, for "
              + Figures.fixed(dividePrice * 100, 1)
              + " % of scale.");
    }
    return new Findings(title, folder.path(), read, unnamed(folder), sheets, closing, weight);
  }

  /** How each file was read. */
  private static String roles(FlatFolder folder) {
    List<String> parts = new ArrayList<>();
    for (FlatFile file : folder.flats()) {
      parts.add(file.name() + " as " + file.role().name().toLowerCase(Locale.ROOT));
    }
    return String.join(", ", parts) + ".";
  }

  private static List<String> grouped(FlatSet set) {
    List<String> parts = new ArrayList<>();
    set.ratios().forEach((id, ratio) -> parts.add(id + " at " + Figures.trimmed(ratio, 2)));
    return parts.isEmpty()
        ? List.of()
        : List.of(
            "Grouped at one scale, as drawn heights agree: " + String.join(", ", parts) + ".");
  }

  /** What is to be known of a folder that was read. */
  public static List<String> read(FlatFolder folder) {
    List<String> read = new ArrayList<>();
    for (String name : unnamed(folder)) {
      read.add(name + ": no role in its name, taken as a detail.");
    }
    if (!folder.leftAlone().isEmpty()) {
      read.add(
          "Left alone, not named as pictures are: " + String.join(", ", folder.leftAlone()) + ".");
    }
    return read;
  }

  /** Names of files whose names say no role. */
  public static List<String> unnamed(FlatFolder folder) {
    List<String> names = new ArrayList<>();
    for (FlatFile file : folder.flats()) {
      if (!file.worded()) {
        names.add(file.name());
      }
    }
    return names;
  }
}
