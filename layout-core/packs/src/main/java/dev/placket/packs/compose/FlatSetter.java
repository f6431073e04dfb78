package dev.placket.packs.compose;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Grouping;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackLeaders;
import dev.placket.packs.description.Words;
import dev.placket.packs.flats.CaptionRoom;
import dev.placket.packs.flats.FlatCaption;
import dev.placket.packs.flats.FlatFile;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.FlatSpots;
import dev.placket.packs.flats.LineWeight;
import dev.placket.packs.flats.ScaleLine;
import dev.placket.packs.flats.ScaleLines;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.base.OutlineLines;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Turns the flats of a sheet into what the solver sees. */
final class FlatSetter {
  /** A picture in a row of a table is looked at, not measured. */
  private static final Length LEAST_IN_ROW = Length.mm(5);

  private final Described described;
  private final FlatFiles files;
  private final Lettering lettering;
  private final DensityTargets targets;
  private final boolean allowSoft;
  private final SpotSetter spots;
  private final DetailCodes codes;

  FlatSetter(
      Described described,
      FlatFiles files,
      Lettering lettering,
      DensityTargets targets,
      boolean allowSoft) {
    this(described, files, lettering, targets, allowSoft, DetailCodes.NONE);
  }

  private FlatSetter(
      Described described,
      FlatFiles files,
      Lettering lettering,
      DensityTargets targets,
      boolean allowSoft,
      DetailCodes codes) {
    this.codes = codes;
    this.described = described;
    this.files = files;
    this.lettering = lettering;
    this.targets = targets;
    this.allowSoft = allowSoft;
    this.spots = new SpotSetter(described, codes);
  }

  /** This setter where callouts name details. */
  FlatSetter with(DetailCodes other) {
    return new FlatSetter(described, files, lettering, targets, allowSoft, other);
  }

  /**
   * The picture that belongs to a flat of a description.
   *
   * @param id the flat
   * @param flat its description
   * @param path where it is said
   * @param weight the width of its lines on paper; null as they are drawn
   */
  record Read(
      String id, PackFlat flat, String path, FlatFiles.Found found, @Nullable LineWeight weight) {
    Picture picture() {
      return found.picture();
    }

    /** What of it is placed: its ink, or its paths where its lines have a width of their own. */
    InkedBox ink() {
      return weight == null ? FlatSet.ink(found.picture(), flat.role()) : weight.lines().geometry();
    }
  }

  /** All pictures at a place of the description that can be read; slips are noted. */
  List<Read> read(String at, Map<String, PackFlat> flats) {
    List<Read> read = new ArrayList<>();
    flats.forEach(
        (id, flat) -> {
          String path = at + "/flats/" + id;
          FlatFiles.Found found = files.picture(flat, path);
          if (found != null) {
            read.add(read(id, flat, path, found));
          }
        });
    return read;
  }

  /** A picture that was found; a width of lines that it cannot have is noted. */
  Read read(String id, PackFlat flat, String path, FlatFiles.Found found) {
    Length stated = flat.lineWeight();
    Length asked = stated == null ? described.pack().lineWeight(flat.role()) : stated;
    OutlineLines lines =
        asked == null || flat.role() == Role.SWATCH || !(found.picture() instanceof Drawing drawing)
            ? null
            : drawing.lines();
    if (lines == null && stated != null) {
      described
          .faults()
          .add(
              described.places().of(path + "/line-weight"),
              "line-weight for a picture without lines of its own",
              "an SVG drawing with strokes");
    }
    if (flat.outline() != null && asked == null) {
      described
          .faults()
          .add(
              described.places().of(path + "/outline"),
              "an outline without line-weight",
              "line-weight, as in 0.6mm");
    }
    Double named =
        asked == null || lines == null || flat.outline() == null ? null : files.outline(flat, path);
    if (lines != null && named != null) {
      lines = new OutlineLines(named, lines.reach(), lines.geometry());
    }
    LineWeight weight = asked == null || lines == null ? null : new LineWeight(asked, lines);
    return new Read(id, flat, path, found, weight);
  }

  /**
   * One flat.
   *
   * @param windows where it may lie
   * @param inRow whether its window is in a row of a table
   * @param grouped the ratio in the group of views formed unasked, or null
   * @param even whether its longest side aims at that of the first flat, for want of a view
   * @param scale the line on its scale; null for none
   * @param leaders how the leaders of its callouts run
   * @param bar whether it has the bar under it by which a print at true size is checked
   */
  FlatSet.@Nullable Item item(
      Read read,
      List<String> windows,
      boolean inRow,
      @Nullable Double grouped,
      boolean even,
      @Nullable ScaleLine scale,
      PackLeaders leaders,
      boolean bar,
      PackText text) {
    PackFlat said = read.flat();
    PackFlat.Scaling scaling = said.scaling();
    Map<String, PlanePoint> points = spots.points(read);
    String level = level(read, points);
    if (said.trueSize() && scaling.unit() == null) {
      add(read, "true-size", "true-size without unit", "unit, the real length of one drawing unit");
      return null;
    }
    Double ratio = scaling.group() == null ? grouped : Double.valueOf(ratio(said));
    FlatCaption caption = caption(read, inRow, scale, text);
    Limits limits = limits(read, inRow);
    if (caption == null || limits == null) {
      return null;
    }
    Flat flat =
        Flat.of(read.id(), said.role(), read.ink())
            .withWindows(windows)
            .withLimits(limits)
            .withHeld(held(said))
            .withShare(share(scaling, said, even))
            .withSurround(surround(caption, read, bar, text));
    flat = flat.withPoints(points, level);
    Length unit = scaling.unit();
    flat = unit == null ? flat : flat.withUnitLength(unit);
    if (ratio != null) {
      String group = scaling.group();
      flat = flat.withGroup(group == null ? Grouping.VIEWS : group, ratio);
    }
    // Without a caption of their own several would be called alike.
    String uncaptioned = LanguageMarks.without(title(said, text)) + " " + read.id();
    boolean alike = caption.name().isEmpty() || said.caption() == null && !said.role().isView();
    String title = alike ? uncaptioned : LanguageMarks.without(String.join(" ", caption.name()));
    FlatFile source =
        new FlatFile(
            read.found().file(),
            read.found().part(),
            said.layers(),
            read.found().digest(),
            read.id(),
            said.role(),
            "role",
            title,
            read.picture());
    FlatSpots all = spots.of(read, flat, leaders, text, lettering);
    return new FlatSet.Item(source, flat, caption, all, read.weight());
  }

  private static double ratio(PackFlat said) {
    Double stated = said.scaling().ratio();
    if (stated != null) {
      return stated;
    }
    return said.role().isView() && !isMeasured(said) ? said.role().share() : 1;
  }

  /** Whether lines of measure are drawn on it. */
  static boolean isMeasured(PackFlat said) {
    return !said.spots().dimensions().isEmpty();
  }

  /**
   * The scale of each flat in words, by its id; differing units in one group are a mistake.
   *
   * @param grouped the ratio of each flat in the group of views formed unasked
   */
  Map<String, ScaleLine> scales(List<Read> all, Map<String, Double> grouped, PackText text) {
    List<ScaleLines.Member> members = new ArrayList<>();
    Map<String, Read> byId = new LinkedHashMap<>();
    for (Read read : all) {
      PackFlat said = read.flat();
      PackFlat.Scaling scaling = said.scaling();
      Double formed = grouped.get(read.id());
      String group = formed == null ? scaling.group() : Grouping.VIEWS;
      double ratio = formed == null ? ratio(said) : formed;
      Words caption = said.caption();
      String path = read.path() + "/caption";
      Function<String, String> name =
          caption == null || caption.blank()
              ? language -> ""
              : language -> text.in(caption, language, path);
      boolean stated = scaling.ratio() != null || said.trueSize();
      members.add(
          new ScaleLines.Member(
              read.id(), said.role(), name, group, ratio, stated, scaling.unit()));
      byId.put(read.id(), read);
    }
    for (ScaleLines.Unlike unlike : ScaleLines.unlike(members)) {
      add(
          Objects.requireNonNull(byId.get(unlike.other().id())),
          "unit",
          "a unit unlike that of " + unlike.lead().id() + ": " + unlike.question(),
          "one unit for both, a ratio that is meant so, or a group of its own");
    }
    return ScaleLines.of(members, text.phrases());
  }

  private static double share(PackFlat.Scaling scaling, PackFlat said, boolean even) {
    Double stated = scaling.share();
    if (stated != null) {
      return stated;
    }
    return even ? 1 : said.role().share();
  }

  private static Held held(PackFlat said) {
    Length unit = said.scaling().unit();
    return said.trueSize() && unit != null
        ? new Held(said.held().left(), said.held().top(), unit.pt())
        : said.held();
  }

  private Surround surround(FlatCaption caption, Read read, boolean bar, PackText text) {
    Surround below = caption.surround(lettering);
    Surround own = bar ? CheckBar.under(below, text.phrases(), lettering) : below;
    LineWeight weight = read.weight();
    return weight == null ? own : weight.around(own);
  }

  private @Nullable String level(Read read, Map<String, PlanePoint> points) {
    String level = read.flat().level();
    if (level == null || points.containsKey(level)) {
      return level;
    }
    if (points.isEmpty()) {
      add(read, "level", "a level in a picture of pixels", "a drawing with named parts");
    } else {
      described
          .faults()
          .unknown(
              described.places().of(read.path() + "/level"),
              "no part of the drawing named",
              level,
              points.keySet());
    }
    return null;
  }

  private @Nullable Limits limits(Read read, boolean inRow) {
    PackFlat said = read.flat();
    if (said.trueSize()) {
      return Limits.NONE;
    }
    Limits usual = FlatSet.limits(said.role(), read.picture(), targets, allowSoft);
    Length floor =
        inRow && usual.least().compareTo(LEAST_IN_ROW) > 0 ? LEAST_IN_ROW : usual.least();
    Length stated = said.greatest();
    Length most = usual.greatest();
    if (stated != null && (most == null || stated.compareTo(most) < 0)) {
      most = stated;
    }
    Length least = said.least();
    if (least == null) {
      return new Limits(most != null && most.compareTo(floor) < 0 ? most : floor, most);
    }
    if (stated != null && stated.compareTo(least) < 0) {
      add(read, "greatest", "a greatest size under the least", "one that is not under it");
      return null;
    }
    return new Limits(least, most != null && most.compareTo(least) < 0 ? least : most);
  }

  private @Nullable FlatCaption caption(
      Read read, boolean inRow, @Nullable ScaleLine scale, PackText text) {
    PackFlat said = read.flat();
    boolean none = said.caption() == null ? inRow : said.caption().blank();
    String code = codes.code(read.id());
    if (none && code.isEmpty()) {
      return FlatCaption.NONE;
    }
    String plain = none ? "" : name(said, read.path(), text);
    String name = code.isEmpty() ? plain : (code + "  " + plain).strip();
    String note = text.setLines(said.note(), read.path() + "/note");
    String fault = lettering.fault(name + "\n" + note);
    if (fault != null) {
      add(read, "caption", fault, "letters that one of the fonts has");
      return null;
    }
    return FlatCaption.of(name, note, scale, CaptionRoom.USUAL.of(said.role()), lettering);
  }

  private static String name(PackFlat said, String path, PackText text) {
    return said.caption() == null
        ? title(said, text)
        : text.setBeside(said.caption(), path + "/caption");
  }

  private static String title(PackFlat said, PackText text) {
    return text.phrases().beside(StockPhrase.caption(said.role()));
  }

  private void add(Read read, String key, String found, String expected) {
    described.faults().add(described.places().of(read.path() + "/" + key), found, expected);
  }
}
