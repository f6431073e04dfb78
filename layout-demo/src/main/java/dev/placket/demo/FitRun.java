package dev.placket.demo;

import dev.placket.demo.folder.FlatFolder;
import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.folder.PackNotes.Field;
import dev.placket.demo.pdf.PdfPack;
import dev.placket.demo.result.FitJson;
import dev.placket.demo.result.Outputs;
import dev.placket.demo.result.Report;
import dev.placket.demo.result.SheetResult;
import dev.placket.demo.sheet.FlatSheet;
import dev.placket.demo.sheet.Lettering;
import dev.placket.demo.sheet.Page;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.sheet.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    long weight) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  /**
   * What a run leaves.
   *
   * @param report for the designer
   * @param soft whether any picture is soft, or the weight is not kept
   */
  record Result(String report, boolean soft) {}

  Result run() throws Refusal {
    Lettering lettering = Lettering.load();
    FlatFolder read = FlatFolder.read(folder);
    FlatSet set = FlatSet.of(read, TARGETS, allowSoft, lettering);
    String name = fileName(read);
    Outputs outputs = new Outputs(out, replace);
    List<String> names = new ArrayList<>(List.of(name + ".pdf", name + ".png"));
    if (blank) {
      names.add(name + "-blank.pdf");
    }
    names.add("fit.json");
    List<String> obstacles = outputs.obstacles(names);
    if (!obstacles.isEmpty()) {
      throw new Refusal(Refusal.INPUT, obstacles);
    }
    FlatSheet sheet = new FlatSheet(paper, read.notes(), lettering);
    SheetFit fitting = new SheetFit(sheet, set);
    List<SheetFit.Placed> placed = fitting.fit();
    if (placed.size() > 1) {
      names.remove(name + ".png");
      names.addAll(1, previews(name, placed.size()));
      obstacles = outputs.obstacles(names);
      if (!obstacles.isEmpty()) {
        throw new Refusal(Refusal.INPUT, obstacles);
      }
    }
    String title = title(read);
    PdfPack pack = new PdfPack(title);
    KeepWeight.Writer writer = drawn -> pack.pdf(pages(sheet, placed, drawn, lettering));
    KeepWeight.Kept kept = kept(writer, set, placed);
    List<SheetResult> results = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      SheetFit.Placed each = placed.get(i);
      SheetResult result = SheetResult.of(each.request(), each.fit(), kept.sheets().get(i));
      results.add(result.of(each.further()));
    }
    List<PdfPack.Filled> pages = pages(sheet, placed, kept.sheets(), lettering);
    outputs.write(files(names, title, pages, kept, read, results));
    List<Path> written = names.stream().map(out::resolve).toList();
    double price = fitting.dividePrice();
    String report = Report.of(title, read, set, results, price, kept.weight(), written);
    boolean soft = kept.sheets().stream().flatMap(List::stream).anyMatch(Drawn::soft);
    return new Result(report, soft || kept.weight().over() > 0);
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
      Page page = sheet.page(placed.get(i).divide(), densityNote(flats), ofSheets);
      pages.add(
          new PdfPack.Filled(page, flats.stream().map(f -> Drawn.inked(f, lettering)).toList()));
    }
    return pages;
  }

  private static List<String> previews(String name, int sheets) {
    return IntStream.rangeClosed(1, sheets).mapToObj(i -> name + "-" + i + ".png").toList();
  }

  /** The files in the order of their names: the PDF, a preview of each sheet, and the rest. */
  private Map<String, byte[]> files(
      List<String> names,
      String title,
      List<PdfPack.Filled> pages,
      KeepWeight.Kept kept,
      FlatFolder read,
      List<SheetResult> results) {
    try {
      List<byte[]> contents = new ArrayList<>();
      contents.add(kept.file());
      pages.forEach(p -> contents.add(PdfPack.preview(p)));
      if (blank) {
        List<PdfPack.Filled> blanks =
            pages.stream().map(p -> new PdfPack.Filled(p.page(), List.of())).toList();
        contents.add(new PdfPack(title).pdf(blanks));
      }
      contents.add(FitJson.bytes(title, read.notes().fields(), TARGETS, kept.weight(), results));
      Map<String, byte[]> files = new LinkedHashMap<>();
      for (int i = 0; i < contents.size(); i++) {
        files.put(names.get(i), contents.get(i));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String densityNote(List<PlacedFlat> flats) {
    List<Long> densities =
        flats.stream()
            .flatMap(f -> Stream.ofNullable(f.embeddedDensity()))
            .map(Math::round)
            .sorted()
            .toList();
    if (densities.isEmpty()) {
      return "Drawn with lines, sharp at any size.";
    }
    long least = densities.get(0);
    long most = densities.get(densities.size() - 1);
    String range = least == most ? "" + least : least + " to " + most;
    return "Pictures print at " + range + " pixels per inch, drawings are sharp.";
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
    String name = (number.isBlank() ? folderName() : number).replaceAll("[^\\p{L}\\p{N}._-]+", "-");
    return name.replaceAll("^[-.]+|[-.]+$", "").isEmpty() ? "sheet" : name;
  }

  private String folderName() {
    Path last = folder.toAbsolutePath().normalize().getFileName();
    return last == null ? "sheet" : last.toString();
  }
}
