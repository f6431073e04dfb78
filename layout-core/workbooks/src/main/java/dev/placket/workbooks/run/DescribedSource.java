package dev.placket.workbooks.run;

import dev.placket.packs.compose.DescribedWorkbook;
import dev.placket.packs.description.PackWorksheet;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.output.PackName;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.place.Asked;
import dev.placket.workbooks.read.Workbook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Flats of a description, which says for which worksheet each is.
 *
 * @param said the description, read
 * @param onto the workbook
 */
public record DescribedSource(DescribedWorkbook said, Path onto) implements WorkbookFlats.Source {
  @Override
  public WorkbookFlats of(Workbook workbook, Lettering lettering) throws Refusal {
    List<WorkbookFlats.Task> tasks = new ArrayList<>();
    List<Fault> wrong = new ArrayList<>();
    for (Map.Entry<String, PackWorksheet> e : said.worksheets().entrySet()) {
      PackWorksheet worksheet = e.getValue();
      FlatSet set = said.flats().get(e.getKey());
      Workbook.Entry entry = workbook.worksheet(worksheet.name()).orElse(null);
      if (entry == null) {
        wrong.add(Jobs.unknown(onto, worksheet.name(), workbook));
      } else if (set != null) {
        Asked asked = new Asked(worksheet.windows(), worksheet.labelled());
        List<String> notes = tasks.isEmpty() ? said.notes() : List.of();
        tasks.add(new WorkbookFlats.Task(set, asked, List.of(entry), notes, List.of()));
      }
    }
    if (!wrong.isEmpty()) {
      throw Refusal.input(wrong);
    }
    return new WorkbookFlats(
        said.description(), PackName.title(said.fields(), ""), said.fields(), tasks);
  }
}
