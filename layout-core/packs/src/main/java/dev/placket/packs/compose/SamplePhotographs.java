package dev.placket.packs.compose;

import dev.placket.layout.callout.LeaderEnd;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackCallout;
import dev.placket.packs.description.PackColouring;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackPoint;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackSpots;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.description.Words;
import dev.placket.packs.flats.Reading;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts the photographs of samples onto their sheets, each spot with the number of its comment. */
public final class SamplePhotographs {
  /** The least longest side at which a photograph of a sample is looked at. */
  private static final Length LEAST = Length.mm(60);

  private static final Pattern SPOT =
      Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{1,3})?)% +([0-9]{1,3}(?:\\.[0-9]{1,3})?)%");

  private final Described described;
  private final List<SampleRow> rows;

  /** A photograph, with the spots of each comment by its number. */
  private record Photograph(String file, Map<Integer, List<PlanePoint>> spots) {}

  private SamplePhotographs(Described described, List<SampleRow> rows) {
    this.described = described;
    this.rows = rows;
  }

  /**
   * The names of the photographs that the files of samples name, beside the description.
   *
   * @param ranges reads ranges of workbooks
   */
  public static Set<String> files(Described described, RangeReader ranges) {
    PackSamples samples = described.pack().samples();
    Set<String> names = new LinkedHashSet<>();
    if (samples != null) {
      FlatFiles files = new FlatFiles(described, Reading.DEFAULT);
      TableFile tables = new TableFile(described, files, ranges);
      SampleFiles.read(described, samples, tables).forEach(r -> names.add(r.of("photograph")));
      names.remove("");
    }
    return names;
  }

  /** The description with the photographs as flats; slips are noted. */
  static Described placed(Described described, List<SampleRow> rows) {
    SamplePhotographs all = new SamplePhotographs(described, rows);
    Map<String, List<Photograph>> bySample = all.photographs();
    Map<String, PackSheet> sheets = new LinkedHashMap<>();
    described
        .pack()
        .sheets()
        .forEach(
            (id, sheet) -> {
              String check = sheet.check();
              boolean shows = check != null && !sheet.photographs().isEmpty();
              List<Photograph> its = shows ? bySample.getOrDefault(check, List.of()) : List.of();
              sheets.put(id, its.isEmpty() ? sheet : with(id, sheet, its));
            });
    Pack pack = described.pack().with(sheets);
    return new Described(described.file(), pack, described.places(), described.faults());
  }

  private Map<String, List<Photograph>> photographs() {
    Map<String, Map<String, Photograph>> all = new LinkedHashMap<>();
    for (SampleRow row : rows) {
      String file = row.of("photograph");
      if (file.isEmpty()) {
        if (!row.of("at").isEmpty()) {
          row.fault(described, "at", "a spot without photograph", "the file under 'photograph'");
        }
        continue;
      }
      if (!isThere(file)) {
        row.fault(
            described, "photograph", "no file '" + file + "'", "a file beside the description");
        continue;
      }
      Photograph photograph =
          all.computeIfAbsent(row.of("sample"), s -> new LinkedHashMap<>())
              .computeIfAbsent(file, f -> new Photograph(f, new LinkedHashMap<>()));
      List<PlanePoint> spots = spots(row);
      int number = CommentBook.number(row);
      if (number > 0 && !spots.isEmpty()) {
        photograph.spots.computeIfAbsent(number, n -> new ArrayList<>()).addAll(spots);
      }
    }
    Map<String, List<Photograph>> listed = new LinkedHashMap<>();
    all.forEach((sample, its) -> listed.put(sample, List.copyOf(its.values())));
    return listed;
  }

  private boolean isThere(String file) {
    try {
      Path path = described.folder().resolve(file).normalize();
      return path.startsWith(described.folder()) && Files.isRegularFile(path);
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private List<PlanePoint> spots(SampleRow row) {
    List<PlanePoint> spots = new ArrayList<>();
    if (row.of("at").isEmpty()) {
      return spots;
    }
    for (String each : row.of("at").split(";")) {
      Matcher m = SPOT.matcher(each.strip());
      boolean fits = m.matches();
      double x = fits ? Double.parseDouble(m.group(1)) / 100 : 2;
      double y = fits ? Double.parseDouble(m.group(2)) / 100 : 2;
      if (x > 1 || y > 1) {
        String form = "from the left and the top, as in 40% 55%, with ; between spots";
        row.fault(described, "at", "'" + each.strip() + "'", form);
        return List.of();
      }
      spots.add(new PlanePoint(x, y));
    }
    return spots;
  }

  private static PackSheet with(String id, PackSheet sheet, List<Photograph> photographs) {
    Map<String, PackFlat> flats = new LinkedHashMap<>(sheet.flats());
    for (int i = 0; i < photographs.size(); i++) {
      String flat = id + "-photograph-" + (i + 1);
      flats.put(flat, flat(flat, photographs.get(i), sheet.photographs()));
    }
    return sheet.with(flats);
  }

  private static PackFlat flat(String id, Photograph photograph, List<String> windows) {
    Map<String, PackPoint> points = new LinkedHashMap<>();
    Map<String, PackCallout> callouts = new LinkedHashMap<>();
    photograph.spots.forEach(
        (number, spots) -> {
          List<String> names = new ArrayList<>();
          for (PlanePoint spot : spots) {
            String name = id + "-" + number + "-" + (names.size() + 1);
            names.add(name);
            points.put(name, new PackPoint(null, null, spot));
          }
          callouts.put(
              id + "-" + number,
              new PackCallout(names, Words.NONE, "" + number, "", null, LeaderEnd.ARROW));
        });
    return new PackFlat(
        photograph.file,
        Role.PHOTO,
        windows,
        PackFlat.Scaling.FREE,
        LEAST,
        null,
        false,
        null,
        Words.NONE,
        null,
        Held.NOTHING,
        PackColouring.NONE,
        List.of(),
        null,
        null,
        List.of(),
        new PackSpots(points, callouts, Map.of()));
  }
}
