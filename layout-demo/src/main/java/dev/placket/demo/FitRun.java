package dev.placket.demo;

import dev.placket.demo.folder.FlatFolder;
import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.folder.PackNotes.Field;
import dev.placket.demo.pdf.Inked;
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
    SheetFit.Placed placed = fitting.fit();
    String title = title(read);
    PdfPack pack = new PdfPack(title);
    KeepWeight.Writer writer =
        sheets -> {
          List<PlacedFlat> drawn = sheets.get(0);
          Page page = sheet.page(placed.divide(), densityNote(drawn));
          return pack.pdf(page, drawn.stream().map(f -> Drawn.inked(f, lettering)).toList());
        };
    KeepWeight.Kept kept = kept(writer, Placing.of(set, placed, TARGETS));
    List<PlacedFlat> flats = kept.sheets().get(0);
    Page page = sheet.page(placed.divide(), densityNote(flats));
    outputs.write(files(name, title, page, lettering, kept, read, placed));
    List<Path> written = names.stream().map(out::resolve).toList();
    double price = fitting.dividePrice();
    String report = Report.of(title, read, set, flats, placed.fit(), price, kept.weight(), written);
    return new Result(report, flats.stream().anyMatch(Drawn::soft) || kept.weight().over() > 0);
  }

  private KeepWeight.Kept kept(KeepWeight.Writer writer, List<PlacedFlat> flats) throws Refusal {
    try {
      return new KeepWeight(weight, TARGETS, writer).write(List.of(flats));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Map<String, byte[]> files(
      String name,
      String title,
      Page page,
      Lettering lettering,
      KeepWeight.Kept kept,
      FlatFolder read,
      SheetFit.Placed placed) {
    List<PlacedFlat> flats = kept.sheets().get(0);
    try {
      Map<String, byte[]> files = new LinkedHashMap<>();
      files.put(name + ".pdf", kept.file());
      List<Inked> inked = flats.stream().map(f -> Drawn.inked(f, lettering)).toList();
      files.put(name + ".png", PdfPack.preview(new PdfPack.Filled(page, inked)));
      if (blank) {
        files.put(name + "-blank.pdf", new PdfPack(title).pdf(page, List.of()));
      }
      files.put(
          "fit.json",
          FitJson.bytes(
              title,
              read.notes().fields(),
              TARGETS,
              kept.weight(),
              List.of(SheetResult.of(placed.request(), placed.fit(), flats))));
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
