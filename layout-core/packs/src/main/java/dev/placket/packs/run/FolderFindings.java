package dev.placket.packs.run;

import dev.placket.packs.flats.FlatFile;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.folder.FlatFolder;
import dev.placket.packs.report.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a report says of a folder. */
public final class FolderFindings {
  private FolderFindings() {}

  /** How each file was read and grouped. */
  static List<String> all(FlatFolder folder, FlatSet set) {
    List<String> read = new ArrayList<>(List.of(roles(folder)));
    read.addAll(grouped(set));
    read.addAll(read(folder));
    return read;
  }

  /** How each file was read. */
  private static String roles(FlatFolder folder) {
    List<String> parts = new ArrayList<>();
    for (FlatFile file : folder.flats()) {
      String role = file.role().name().toLowerCase(Locale.ROOT);
      String because = file.because();
      boolean plain = because == null || because.equalsIgnoreCase(role);
      parts.add(file.name() + " as " + role + (plain ? "" : " (" + because + ")"));
    }
    return String.join(", ", parts) + ".";
  }

  private static List<String> grouped(FlatSet set) {
    List<String> parts = new ArrayList<>();
    set.ratios().forEach((id, ratio) -> parts.add(id + " at " + Figures.trimmed(ratio, 2)));
    return parts.isEmpty()
        ? List.of()
        : List.of(
            "Grouped at one scale, since their drawn heights agree: "
                + String.join(", ", parts)
                + ".");
  }

  /** What is to be known of a folder that was read. */
  public static List<String> read(FlatFolder folder) {
    List<String> read = new ArrayList<>();
    for (String name : unnamed(folder)) {
      read.add(name + ": no role in its name, read as a detail.");
    }
    if (!folder.leftAlone().isEmpty()) {
      read.add(
          "Ignored, not picture files by name: " + String.join(", ", folder.leftAlone()) + ".");
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
