package dev.placket.demo.workbook;

import dev.placket.demo.Refusal;
import dev.placket.demo.description.PackWorksheet;
import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.pack.DescribedWorkbook;
import dev.placket.demo.sheet.Lettering;
import dev.placket.demo.workbook.place.Asked;
import dev.placket.demo.workbook.read.Workbook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flats of a description, which says for which worksheet each is.
 *
 * @param said the description, read
 * @param onto the workbook
 */
record DescribedSource(DescribedWorkbook said, Path onto) implements Given.Source {
  @Override
  public Given of(Workbook workbook, Lettering lettering) throws Refusal {
    List<Given.Task> tasks = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, PackWorksheet> e : said.worksheets().entrySet()) {
      PackWorksheet worksheet = e.getValue();
      FlatSet set = said.flats().get(e.getKey());
      Workbook.Entry entry = workbook.worksheet(worksheet.name()).orElse(null);
      if (entry == null) {
        wrong.add(Jobs.unknown(onto, worksheet.name(), workbook));
      } else if (set != null) {
        Asked asked = new Asked(worksheet.windows(), worksheet.labelled());
        List<String> notes = tasks.isEmpty() ? said.notes() : List.of();
        tasks.add(new Given.Task(set, asked, List.of(entry), notes, List.of()));
      }
    }
    if (!wrong.isEmpty()) {
      throw new Refusal(Refusal.INPUT, wrong);
    }
    return new Given(said.description(), title(said.fields()), said.fields(), tasks);
  }

  private static String title(Map<String, String> fields) {
    return Stream.of("label", "style-number", "style-name")
        .map(f -> fields.getOrDefault(f, ""))
        .filter(v -> !v.isBlank())
        .collect(Collectors.joining(" "));
  }
}
