package dev.placket.workbooks.run;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.read.Workbook;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which flats go to which worksheet: a folder named as a worksheet holds that worksheet's flats;
 * flats beside such folders go to the worksheet that is named, else to the first that has room.
 */
final class Jobs {
  private Jobs() {}

  /**
   * Flats with the worksheets that may take them.
   *
   * @param folder where the flats lie
   * @param worksheets the worksheets to try, in order; the first with room takes them
   */
  record Job(Path folder, List<Workbook.Entry> worksheets) {}

  /**
   * All jobs of a folder.
   *
   * @param named the worksheet for the flats that lie in the folder itself, empty for any
   * @throws Refusal naming what cannot be used
   */
  static List<Job> of(Path folder, Path onto, Workbook workbook, String named) throws Refusal {
    List<Job> jobs = new ArrayList<>();
    List<Path> inside = list(folder);
    List<Workbook.Entry> taken = new ArrayList<>();
    for (Path sub : inside) {
      var worksheet = workbook.worksheet(sub.getFileName().toString());
      if (Files.isDirectory(sub) && worksheet.isPresent()) {
        jobs.add(new Job(sub, List.of(worksheet.get())));
        taken.add(worksheet.get());
      }
    }
    boolean loose = inside.stream().anyMatch(p -> Files.isRegularFile(p) && picture(p));
    if (loose || jobs.isEmpty()) {
      jobs.add(0, new Job(folder, candidates(onto, workbook, named, taken)));
    }
    return jobs;
  }

  private static List<Workbook.Entry> candidates(
      Path onto, Workbook workbook, String named, List<Workbook.Entry> taken) throws Refusal {
    if (!named.isEmpty()) {
      return List.of(
          workbook
              .worksheet(named)
              .orElseThrow(() -> Refusal.input(unknown(onto, named, workbook))));
    }
    List<Workbook.Entry> shown =
        workbook.worksheets().stream().filter(w -> !w.hidden() && !taken.contains(w)).toList();
    if (shown.isEmpty()) {
      throw Refusal.input(
          Fault.content(onto, "shows no worksheet for the flats")
              .remedy("name a hidden worksheet", WorkbookSetting.WORKSHEET));
    }
    return shown;
  }

  /** The fault of a worksheet that is not there. */
  static Fault unknown(Path onto, String name, Workbook workbook) {
    return Fault.content(onto, "has no worksheet '" + name + "'")
        .remedy("it has " + names(workbook));
  }

  private static String names(Workbook workbook) {
    return String.join(", ", workbook.worksheets().stream().map(Workbook.Entry::name).toList());
  }

  private static boolean picture(Path file) {
    String name = file.getFileName().toString();
    return !name.startsWith(".") && PictureReader.isNamedAsPicture(name);
  }

  private static List<Path> list(Path folder) throws Refusal {
    if (!Files.isDirectory(folder)) {
      throw Refusal.input(
          Fault.unreadable(folder, "is not a folder").remedy("give the folder with the drawings"));
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    } catch (IOException e) {
      throw Refusal.input(Fault.unreadable(folder, "cannot be read: " + e.getMessage()));
    }
  }
}
