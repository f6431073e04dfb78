package dev.placket.demo;

import dev.placket.demo.folder.FlatFolder;
import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.folder.PackNotes.Field;
import dev.placket.demo.output.OutputName;
import dev.placket.demo.pack.PackLimits;
import dev.placket.demo.pdf.PdfPack;
import dev.placket.demo.result.Findings;
import dev.placket.demo.result.RunResult;
import dev.placket.demo.result.SheetResult;
import dev.placket.demo.result.Telling;
import dev.placket.demo.sheet.CaptionRoom;
import dev.placket.demo.sheet.FlatSheet;
import dev.placket.demo.sheet.Lettering;
import dev.placket.demo.sheet.Page;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.sheet.Paper;
import dev.placket.layout.units.Length;
import dev.placket.pictures.Typefaces;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One run: read, fit, check, draw, write. */
record FitRun(
    Path folder,
    Path out,
    Paper paper,
    boolean blank,
    boolean replace,
    boolean allowSoft,
    long weight,
    PackLimits limits,
    Typefaces typefaces,
    Telling telling) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  RunResult run() throws Refusal {
    Lettering lettering = Lettering.load();
    FlatFolder read = FlatFolder.read(folder, typefaces);
    String name = fileName(read);
    FlatSheet sheet = new FlatSheet(paper, read.notes(), lettering);
    CaptionRoom room = CaptionRoom.on(Length.pt(sheet.width()));
    FlatSet set = FlatSet.of(read, TARGETS, allowSoft, room, lettering);
    if (telling.strict()) {
      Strict.check(set.items());
    }
    files(name, 1).check(set.items().stream());
    SheetFit fitting = new SheetFit(sheet, set);
    String title = title(read);
    List<SheetFit.Placed> placed = placed(fitting, title, read);
    PackOptions.check(folder, placed.size(), limits);
    RunFiles files = files(name, placed.size());
    files.check(set.items().stream());
    PdfPack pack = new PdfPack(title);
    KeepWeight.Writer writer = drawn -> pack.pdf(pages(sheet, placed, drawn, lettering));
    KeepWeight.Kept kept = kept(writer, set, placed);
    List<SheetResult> results = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      SheetFit.Placed each = placed.get(i);
      SheetResult result = SheetResult.of(each.request(), each.fit(), kept.sheets().get(i));
      results.add(result.of(each.further()));
    }
    Findings findings =
        Findings.ofFolder(title, read, set, results, fitting.dividePrice(), kept.weight());
    List<PdfPack.Filled> pages = pages(sheet, placed, kept.sheets(), lettering);
    return files.write(kept.file(), pages, findings, read.notes().fields(), telling);
  }

  private static List<SheetFit.Placed> placed(SheetFit fitting, String title, FlatFolder read)
      throws Refusal {
    try {
      return fitting.fit();
    } catch (Refusal e) {
      throw e.of(title, read.notes().fields());
    }
  }

  private RunFiles files(String name, int sheets) {
    List<String> previews = sheets == 1 ? List.of(name + ".png") : previews(name, sheets);
    return new RunFiles(out, name, previews, blank, replace);
  }

  private KeepWeight.Kept kept(KeepWeight.Writer writer, FlatSet set, List<SheetFit.Placed> placed)
      throws Refusal {
    List<List<PlacedFlat>> sheets =
        placed.stream()
            .map(p -> Placing.of(set.of(p.request().flats()), p.fit(), TARGETS))
            .toList();
    try {
      return new KeepWeight(weight, TARGETS, writer).write(sheets);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The ruled and lettered sheets with what lies on them. */
  private static List<PdfPack.Filled> pages(
      FlatSheet sheet,
      List<SheetFit.Placed> placed,
      List<List<PlacedFlat>> drawn,
      Lettering lettering)
      throws Refusal {
    List<PdfPack.Filled> pages = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      List<PlacedFlat> flats = drawn.get(i);
      String ofSheets = i + 1 + " of " + placed.size();
      Page page = sheet.page(placed.get(i).divide(), ofSheets);
      pages.add(
          new PdfPack.Filled(page, flats.stream().map(f -> Drawn.inked(f, lettering)).toList()));
    }
    return pages;
  }

  private static List<String> previews(String name, int sheets) {
    return IntStream.rangeClosed(1, sheets).mapToObj(i -> name + "-" + i + ".png").toList();
  }

  private String title(FlatFolder read) {
    String named =
        Stream.of(Field.LABEL, Field.STYLE_NUMBER, Field.STYLE_NAME)
            .map(read.notes()::value)
            .filter(v -> !v.isBlank())
            .collect(Collectors.joining(" "));
    return (named.isEmpty() ? folderName() : named) + ": flat sheet";
  }

  private String fileName(FlatFolder read) {
    String number = read.notes().value(Field.STYLE_NUMBER);
    return OutputName.stem(number.isBlank() ? folderName() : number, "sheet");
  }

  private String folderName() {
    Path last = folder.toAbsolutePath().normalize().getFileName();
    return last == null ? "sheet" : last.toString();
  }
}
