package dev.placket.workbooks.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.flats.CaptionRoom;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.FlatFolder;
import dev.placket.packs.folder.FolderFlats;
import dev.placket.packs.folder.PackNotes;
import dev.placket.packs.output.PackName;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.run.FolderFindings;
import dev.placket.packs.text.Lettering;
import dev.placket.workbooks.place.Asked;
import dev.placket.workbooks.read.Workbook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Flats of a folder.
 *
 * @param folder the flats; folders in it that are named as worksheets hold theirs
 * @param onto the workbook
 * @param worksheet the worksheet for flats that lie in the folder itself; empty for the first with
 *     room
 * @param asked ranges for the flats that lie in the folder itself
 * @param allowSoft whether rasters may grow until they are soft
 * @param reading how pictures are read
 */
public record FolderSource(
    Path folder, Path onto, String worksheet, Asked asked, boolean allowSoft, Reading reading)
    implements WorkbookFlats.Source {
  @Override
  public WorkbookFlats of(Workbook workbook, Lettering lettering) throws Refusal {
    List<Jobs.Job> jobs = Jobs.of(folder, onto, workbook, worksheet);
    List<FlatFolder> folders = Together.map(jobs, j -> FlatFolder.read(j.folder(), reading));
    List<WorkbookFlats.Task> tasks = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      FlatFolder read = folders.get(i);
      tasks.add(
          new WorkbookFlats.Task(
              anywhere(
                  FolderFlats.of(
                      read,
                      DensityTargets.DEFAULT,
                      allowSoft,
                      CaptionRoom.USUAL,
                      read.notes().lettering())),
              jobs.get(i).folder().equals(folder) ? asked : Asked.NOTHING,
              jobs.get(i).worksheets(),
              read(read),
              FolderFindings.unnamed(read)));
    }
    PackNotes notes = folders.get(0).notes();
    return new WorkbookFlats(onto, PackName.title(notes.fields(), ""), notes.fields(), tasks);
  }

  private static List<String> read(FlatFolder folder) {
    List<String> lines = new ArrayList<>(FolderFindings.read(folder));
    lines.addAll(folder.notes().phrases().untranslated());
    return lines;
  }

  /** A worksheet has none of the windows of the built-in sheet. */
  private static FlatSet anywhere(FlatSet set) {
    return set.of(set.flats().stream().map(f -> f.withWindows(List.of())).toList());
  }
}
