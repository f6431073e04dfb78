package dev.placket.packs.compose;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.description.Words;
import dev.placket.packs.flats.FlatSpots;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.output.PackName;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.Typeface;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.typeface.Typefaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Makes ruled and lettered sheets of a description. */
public final class Composer {
  private final @Nullable MeasuredList measured;
  private final Map<String, SampleCheck> checks;
  private final List<SampleRow> rows;
  private final List<String> sampleNotes;
  private final List<String> colourNotes = new ArrayList<>();
  private final Described described;
  private final Lettering lettering;
  private final DensityTargets targets;
  private final PackText text;
  private final FlatFiles files;
  private final FlatSetter flats;
  private final List<SheetPlan> plans = new ArrayList<>();
  private final Set<String> shrunk = new LinkedHashSet<>();

  /**
   * Reads the pictures of a description and lays its grids and tables; slips are noted.
   *
   * @param read what was read
   * @param targets when a raster is soft
   * @param allowSoft whether rasters may grow until they are soft
   * @param lettering takes the typefaces that the description names
   * @param given how pictures are read; its typefaces come before those of the description
   * @param mostRows a table of more rows is a slip
   * @param ranges reads ranges of workbooks
   */
  public Composer(
      Described read,
      DensityTargets targets,
      boolean allowSoft,
      Lettering lettering,
      Reading given,
      int mostRows,
      RangeReader ranges) {
    TableFile tableFiles = new TableFile(read, new FlatFiles(read, given), ranges);
    PackSamples samples = read.pack().samples();
    this.rows = samples == null ? List.of() : SampleFiles.read(read, samples, tableFiles);
    Described photographed = SamplePhotographs.placed(read, rows);
    ColourBook colours = ColourBook.of(photographed);
    FlatFiles drawings = new FlatFiles(photographed, given);
    this.described = ColourwayFlats.placed(photographed, drawings, colours, colourNotes);
    MaterialBook materials = MaterialBook.of(described, colours);
    this.lettering = lettering;
    this.targets = targets;
    this.text = PackText.of(described);
    this.files = new FlatFiles(described, reading(described, given));
    Contents.check(described, files, text);
    this.flats = new FlatSetter(described, files, lettering, targets, allowSoft);
    this.measured = Measurements.of(described, tableFiles, text.phrases());
    SampleBook.Judged judged = SampleBook.of(described, measured, text, rows);
    this.checks = judged.checks();
    this.sampleNotes = judged.notes();
    CheckTables checkTables =
        samples == null || measured == null ? null : new CheckTables(measured, samples, checks);
    if (colours != null) {
      colourNotes.addAll(colours.notes());
    }
    colourNotes.addAll(materials.notes());
    for (Map.Entry<String, PackSheet> e : described.pack().sheets().entrySet()) {
      SheetTables tables =
          new SheetTables(
              described,
              tableFiles,
              lettering,
              text,
              shrunk,
              mostRows,
              measured,
              checkTables,
              colours,
              materials,
              e.getValue().check());
      SheetFrame frame = SheetFrame.of(e.getKey(), e.getValue(), described, tables);
      if (frame != null) {
        MarkedRows marks = new MarkedRows(described, e.getKey(), e.getValue());
        plans.add(SheetPlan.of(e.getKey(), e.getValue(), frame, tables, marks));
      }
    }
  }

  /** The typefaces of the pack. */
  public Lettering lettering() {
    return lettering;
  }

  /** The points of measure; null for none. */
  public @Nullable MeasureList measures() {
    return measured == null ? null : measured.list(text);
  }

  /** The samples, judged, by the order of their rounds; none where there are none. */
  public List<SampleCheck> checks() {
    return List.copyOf(checks.values());
  }

  /** The languages that are printed. */
  public Phrases phrases() {
    return text.phrases();
  }

  /** The lettering of a pack: the built-in typeface and those that the description names. */
  public static Lettering lettering(Described described) {
    FlatFiles files = new FlatFiles(described, Reading.DEFAULT);
    List<Typeface> faces = new ArrayList<>();
    List<String> fonts = described.pack().fonts();
    for (int i = 0; i < fonts.size(); i++) {
      String path = "fonts/" + i;
      Path file = files.file(fonts.get(i), path);
      if (file == null) {
        continue;
      }
      try {
        faces.add(Typeface.of(fonts.get(i), Files.readAllBytes(file)));
      } catch (IllegalArgumentException e) {
        String found = fonts.get(i) + ", " + e.getMessage();
        described.faults().add(described.places().of(path), found, "a TrueType font (.ttf)");
      } catch (IOException e) {
        String found = fonts.get(i) + ", which cannot be read";
        described.faults().add(described.places().of(path), found, "a readable file");
      }
    }
    return Lettering.load().with(faces);
  }

  /** Those given, then those of the description; its slips were noted before. */
  static Reading reading(Described described, Reading given) {
    FlatFiles files = new FlatFiles(described, given);
    Typefaces all = given.typefaces();
    List<String> fonts = described.pack().fonts();
    for (int i = 0; i < fonts.size() && !described.faults().any(); i++) {
      String path = "fonts/" + i;
      Path file = files.file(fonts.get(i), path);
      try {
        all = file == null ? all : all.with(List.of(PictureSource.of(file)));
      } catch (PictureException e) {
        String found = e.fault().quoted();
        described.faults().add(described.places().of(path), found, "a TrueType font (.ttf)");
      }
    }
    return given.with(all);
  }

  /**
   * The sheets.
   *
   * @param more the number of further sheets for the flats of a sheet, by its identifier
   * @throws Refusal with every slip of the description
   */
  public ComposedPack pack(Map<String, Integer> more) throws Refusal {
    List<SheetPlan> all = flowing(more);
    int count = sheets(more);
    List<ComposedSheet> sheets = new ArrayList<>();
    CellPicture pictures = new CellPicture(described, files, targets, shrunk);
    FlatSetter coded = flats.with(DetailCodes.of(described, all));
    for (SheetPlan plan : all) {
      for (int page = 0; page < plan.pages(); page++) {
        PackText own = text.onSheet(ofSheet(plan, sheets.size() + 1, count));
        CellSetter cells = new CellSetter(described, lettering, own, shrunk);
        sheets.add(new SheetMaker(described, plan, page, cells, coded, pictures, own).make());
      }
    }
    List<String> drawn = new ArrayList<>();
    if (measured != null) {
      DrawnMeasures check = new DrawnMeasures(described, measured);
      sheets.forEach(s -> drawn.addAll(check.notes(s.id(), s.items())));
    }
    described.faults().refuse();
    List<String> notes = new ArrayList<>(text.missing());
    notes.addAll(shrunk);
    notes.addAll(files.notes());
    notes.addAll(colourNotes);
    if (measured != null) {
      notes.addAll(measured.notes());
      notes.addAll(
          new SampleNotes(measured, rows, described.pack().sheets().values()).of(checks.values()));
      notes.addAll(sampleNotes);
      notes.addAll(drawn);
    }
    if (sheets.stream().flatMap(s -> s.items().stream()).anyMatch(i -> pointedAt(i.spots()))) {
      notes.add("callouts: not drawn where 'leaders: none' is set; fit.json gives their targets.");
    }
    return new ComposedPack(
        PackName.title(fields(), stem()),
        PackName.stem(fields(), stem(), "pack"),
        fields(),
        sheets,
        described.pack().oneScale(),
        ScaleRounding.of(described.pack()),
        notes);
  }

  /**
   * How many sheets there are.
   *
   * @param more the number of further sheets for the flats of a sheet, by its identifier
   */
  public int sheets(Map<String, Integer> more) {
    return flowing(more).stream().mapToInt(SheetPlan::pages).sum();
  }

  private List<SheetPlan> flowing(Map<String, Integer> more) {
    return plans.stream().map(p -> p.flowing(more.getOrDefault(p.id(), 0))).toList();
  }

  private static boolean pointedAt(FlatSpots spots) {
    return !spots.callouts().isEmpty() && spots.plan() == null;
  }

  private static Map<String, Words> ofSheet(SheetPlan plan, int number, int count) {
    Map<String, Words> fields = new LinkedHashMap<>();
    fields.put("sheet", Words.of("" + number));
    fields.put("sheets", Words.of("" + count));
    fields.put("sheet-name", plan.sheet().name());
    fields.put("paper", Words.of(plan.frame().paper().name()));
    return fields;
  }

  private Map<String, String> fields() {
    Map<String, String> fields = new LinkedHashMap<>();
    described.pack().fields().forEach((name, w) -> fields.put(name, leading(w)));
    return fields;
  }

  private String leading(Words words) {
    List<String> texts = words.in(described.pack().languages());
    return texts.isEmpty() ? "" : texts.get(0);
  }

  private String stem() {
    Path last = described.file().getFileName();
    String name = last == null ? "pack" : last.toString();
    return name.replaceAll("\\.[^.]*$", "");
  }
}
