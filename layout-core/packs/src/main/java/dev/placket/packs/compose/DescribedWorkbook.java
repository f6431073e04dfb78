package dev.placket.packs.compose;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackWorkbook;
import dev.placket.packs.description.PackWorksheet;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.FlatSpots;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.text.Lettering;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a description says of a workbook, with the pictures read.
 *
 * @param description the description
 * @param file the workbook
 * @param worksheets what goes onto each worksheet, by identifier
 * @param flats the flats of each worksheet, by identifier
 * @param fields the values of the description's fields
 * @param notes texts that lack a language, and what worksheets do not show
 */
public record DescribedWorkbook(
    Path description,
    Path file,
    Map<String, PackWorksheet> worksheets,
    Map<String, FlatSet> flats,
    Map<String, String> fields,
    List<String> notes) {
  /**
   * Reads the pictures of a description that has a workbook.
   *
   * @param targets when a raster is soft
   * @param allowSoft whether rasters may grow until they are soft
   * @param given how pictures are read; its typefaces come before those of the description
   * @throws Refusal with every slip of the description
   */
  public static DescribedWorkbook of(
      Described read, DensityTargets targets, boolean allowSoft, Reading given) throws Refusal {
    List<String> colourNotes = new ArrayList<>();
    Described described =
        ColourwayFlats.placed(read, new FlatFiles(read, given), ColourBook.of(read), colourNotes);
    Pack pack = described.pack();
    PackWorkbook workbook = pack.workbook();
    if (workbook == null) {
      throw new IllegalArgumentException("a description without workbook");
    }
    Lettering lettering = Composer.lettering(described);
    PackText text = PackText.of(described);
    FlatFiles files = new FlatFiles(described, Composer.reading(described, given));
    Contents.check(described, files, text);
    Path file = files.file(workbook.file(), "workbook/file");
    FlatSetter setter = new FlatSetter(described, files, lettering, targets, allowSoft);
    Map<String, FlatSet> flats = new LinkedHashMap<>();
    workbook.worksheets().forEach((id, w) -> flats.put(id, WorksheetFlats.of(id, w, setter, text)));
    Map<String, String> fields = new LinkedHashMap<>();
    pack.fields().forEach((k, v) -> fields.put(k, text.beside(v, "fields/" + k)));
    described.faults().refuse();
    if (file == null) {
      throw new IllegalStateException("no workbook and no slip");
    }
    return new DescribedWorkbook(
        described.file(),
        file,
        workbook.worksheets(),
        flats,
        fields,
        Stream.of(colourNotes, files.notes(), notes(text, flats.values(), pack))
            .flatMap(List::stream)
            .toList());
  }

  private static List<String> notes(PackText text, Collection<FlatSet> flats, Pack pack) {
    List<String> notes = new ArrayList<>(text.missing());
    List<FlatSpots> spots =
        flats.stream().flatMap(set -> set.items().stream()).map(FlatSet.Item::spots).toList();
    if (spots.stream().anyMatch(s -> !s.callouts().isEmpty())) {
      notes.add("callouts: not drawn on worksheets; fit.json gives their targets.");
    }
    if (spots.stream().anyMatch(s -> !s.dimensions().lines().isEmpty())) {
      notes.add("dimensions: not drawn on worksheets.");
    }
    if (pack.measurements() != null) {
      notes.add("measurements: not used with a workbook.");
    }
    if (pack.samples() != null) {
      notes.add("samples: not used with a workbook.");
    }
    if (!pack.materials().isEmpty()) {
      notes.add("materials: not used with a workbook.");
    }
    return notes;
  }
}
