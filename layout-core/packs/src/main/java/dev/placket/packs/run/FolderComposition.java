package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Parting;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.CaptionRoom;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.folder.FlatFolder;
import dev.placket.packs.folder.FlatSheet;
import dev.placket.packs.folder.FolderFlats;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.output.PackName;
import dev.placket.packs.page.Page;
import dev.placket.packs.placed.Placing;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.PackFacts;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.report.Units;
import dev.placket.packs.text.Lettering;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A folder of flats on the built-in sheet. */
record FolderComposition(
    FlatFolder folder, FlatSheet sheet, FlatSet set, FlatSet even, Lettering lettering, Units units)
    implements Composition {
  /** What the front may lose so that all views have one scale. */
  private static final double EVEN = 0.02;

  static FolderComposition of(Path folder, PaperSize paper, RunOptions how) throws Refusal {
    FlatFolder read = FlatFolder.read(folder, how.reading());
    Lettering lettering = read.notes().lettering();
    FlatSheet sheet = new FlatSheet(paper, read.notes(), lettering);
    CaptionRoom room = CaptionRoom.on(Length.pt(sheet.width()));
    FlatSet set = FolderFlats.of(read, DensityTargets.DEFAULT, how.allowSoft(), room, lettering);
    FlatSet even =
        set.ratios().values().stream().allMatch(r -> r == 1)
            ? set
            : FolderFlats.of(read, 1.0, DensityTargets.DEFAULT, how.allowSoft(), room, lettering);
    return new FolderComposition(read, sheet, set, even, lettering, how.reporting().units());
  }

  @Override
  public Path source() {
    return folder.path();
  }

  @Override
  public String title() {
    return PackName.title(fields(), name()) + ": " + kind();
  }

  private String kind() {
    Phrases phrases = folder.notes().phrases();
    String kind = phrases.in(StockPhrase.FLAT_SHEET, phrases.languages().get(0)).text();
    return phrases.isEnglish() ? kind.toLowerCase(Locale.ROOT) : kind;
  }

  @Override
  public Phrases phrases() {
    return folder.notes().phrases();
  }

  @Override
  public String fileName() {
    return PackName.stem(fields(), name(), "sheet");
  }

  private String name() {
    Path last = folder.path().toAbsolutePath().normalize().getFileName();
    return last == null ? "sheet" : last.toString();
  }

  @Override
  public PackFacts facts() {
    return PackFacts.of(fields());
  }

  private Map<String, String> fields() {
    return folder.notes().fields();
  }

  @Override
  public List<FlatSet.Item> items() {
    return set.items();
  }

  @Override
  public int sheets() {
    return 1;
  }

  @Override
  public Placed place() throws Refusal {
    List<SheetFit.Placed> placed = new SheetFit(sheet, set, units).fit();
    if (even == set || placed.size() > 1) {
      return new OnSheets(set, placed);
    }
    SheetFit.Placed one = new SheetFit(sheet, even, units).onOne();
    return one != null && front(one) >= front(placed.get(0)) * (1 - EVEN)
        ? new OnSheets(even, List.of(one))
        : new OnSheets(set, placed);
  }

  /** The printed scale of the leading view. */
  private static double front(SheetFit.Placed placed) {
    String lead = Targets.lead(placed.request().flats()).id();
    return placed.fit().placement(lead).scale().doubleValue();
  }

  private final class OnSheets implements Placed {
    private final FlatSet placed;
    private final List<SheetFit.Placed> sheets;

    OnSheets(FlatSet placed, List<SheetFit.Placed> sheets) {
      this.placed = placed;
      this.sheets = sheets;
    }

    @Override
    public int sheets() {
      return sheets.size();
    }

    @Override
    public FittedPack pack() throws Refusal {
      List<FittedSheet> fitted = new ArrayList<>();
      for (int i = 0; i < sheets.size(); i++) {
        SheetFit.Placed its = sheets.get(i);
        Page page = page(its, i + 1);
        SheetResult result =
            SheetResult.of(
                its.request().withSheet(page.sheet()),
                its.fit(),
                Placing.of(placed.of(its.request().flats()), its.fit(), DensityTargets.DEFAULT)
                    .stream()
                    .map(f -> f.captioned(lettering))
                    .toList());
        fitted.add(new FittedSheet(result.of(its.further()), page, Set.of()));
      }
      return new FittedPack(
          fitted,
          FolderFindings.all(folder, placed),
          FolderFindings.unnamed(folder),
          folder.notes().phrases().untranslated());
    }

    /** The page, with a line between views and other flats where the fit parts them. */
    private Page page(SheetFit.Placed its, int number) throws Refusal {
      Optional<Parting> parting =
          its.fit().order().stream().anyMatch(s -> s.wish() == OrderWish.PARTED && s.kept())
              ? Parting.of(its.request(), its.fit())
              : Optional.empty();
      return parting.isPresent()
          ? sheet.page(number, sheets.size(), parting.get())
          : sheet.page(number, sheets.size());
    }
  }
}
