package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.sheet.Paper;
import dev.placket.layout.units.Length;
import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.flats.CaptionRoom;
import dev.placket.packs.flats.Differences;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.FlatFolder;
import dev.placket.packs.folder.FlatSheet;
import dev.placket.packs.folder.FolderFlats;
import dev.placket.packs.folder.PackNotes.Field;
import dev.placket.packs.json.NoRoomRefusal;
import dev.placket.packs.output.OutputName;
import dev.placket.packs.page.Page;
import dev.placket.packs.page.PdfPack;
import dev.placket.packs.placed.KeepWeight;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.Placing;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Findings;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.report.Telling;
import dev.placket.packs.text.Lettering;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One run over a folder: read, fit, check, draw, write.
 *
 * @param folder the folder of flats
 * @param out the folder that files are written to
 * @param paper the paper of the sheet
 * @param blank whether the same sheets are written without flats, too
 * @param replace whether existing files are overwritten
 * @param allowSoft whether pictures may grow until they are soft
 * @param weight the maximum size of the PDF in bytes
 * @param limits the maximum size of the pack
 * @param reading how pictures are read
 * @param telling what is reported, and how
 */
public record FitRun(
    Path folder,
    Path out,
    Paper paper,
    boolean blank,
    boolean replace,
    boolean allowSoft,
    long weight,
    PackLimits limits,
    Reading reading,
    Telling telling) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  /**
   * Runs.
   *
   * @throws Refusal if an input is at fault or nothing fits; nothing is written then
   */
  public RunResult run() throws Refusal {
    Lettering lettering = Lettering.load();
    FlatFolder read = FlatFolder.read(folder, reading);
    String name = fileName(read);
    FlatSheet sheet = new FlatSheet(paper, read.notes(), lettering);
    CaptionRoom room = CaptionRoom.on(Length.pt(sheet.width()));
    FlatSet set = FolderFlats.of(read, TARGETS, allowSoft, room, lettering);
    if (telling.strict()) {
      Differences.check(set.items());
    }
    files(name, 1).check(set.items().stream());
    SheetFit fitting = new SheetFit(sheet, set, telling.units());
    String title = title(read);
    List<SheetFit.Placed> placed = placed(fitting, title, read);
    limits.check(folder, placed.size());
    limits.checkPixels(folder, placed.size() * PdfPack.previewPixels(paper));
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
        FolderFindings.of(title, read, set, results, fitting.dividePrice(), kept.weight());
    List<PdfPack.Filled> pages = pages(sheet, placed, kept.sheets(), lettering);
    return files.write(kept.file(), pages, findings, read.notes().fields(), telling);
  }

  private static List<SheetFit.Placed> placed(SheetFit fitting, String title, FlatFolder read)
      throws Refusal {
    try {
      return fitting.fit();
    } catch (NoRoomRefusal e) {
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
