package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.compose.ComposedPack;
import dev.placket.packs.compose.ComposedSheet;
import dev.placket.packs.compose.Composer;
import dev.placket.packs.description.Described;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.PackFacts;
import dev.placket.packs.report.Units;
import dev.placket.packs.text.Lettering;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The sheets of a description. */
record DescribedComposition(Described described, Composer composer, ComposedPack pack, Units units)
    implements Composition {
  static DescribedComposition of(Described described, Lettering lettering, RunOptions how)
      throws Refusal {
    Composer composer =
        new Composer(
            described,
            DensityTargets.DEFAULT,
            how.allowSoft(),
            lettering,
            how.reading(),
            how.limits().rows(),
            how.ranges());
    how.limits().check(described.file(), composer.sheets(Map.of()));
    return new DescribedComposition(
        described, composer, composer.pack(Map.of()), how.reporting().units());
  }

  @Override
  public Path source() {
    return described.file();
  }

  @Override
  public String title() {
    return pack.title();
  }

  @Override
  public Phrases phrases() {
    return composer.phrases();
  }

  @Override
  public String fileName() {
    return pack.fileName();
  }

  @Override
  public PackFacts facts() {
    return new PackFacts(
        pack.fields(), composer.measures(), composer.checks(), described.pack().history());
  }

  @Override
  public List<FlatSet.Item> items() {
    return pack.sheets().stream().flatMap(sheet -> sheet.items().stream()).toList();
  }

  @Override
  public int sheets() {
    return pack.sheets().size();
  }

  @Override
  public Placed place() throws Refusal {
    return new OnSheets(PackFit.of(pack, composer.lettering(), units));
  }

  private final class OnSheets implements Placed {
    private final PackFit fitted;

    OnSheets(PackFit fitted) {
      this.fitted = fitted;
    }

    @Override
    public int sheets() {
      return composer.sheets(fitted.more());
    }

    @Override
    public FittedPack pack() throws Refusal {
      ComposedPack whole = fitted.more().isEmpty() ? pack : composer.pack(fitted.more());
      List<FittedSheet> sheets = new ArrayList<>();
      for (int i = 0; i < whole.sheets().size(); i++) {
        ComposedSheet sheet = whole.sheets().get(i);
        sheets.add(new FittedSheet(fitted.results().get(i), sheet.page(), sheet.trueSize()));
      }
      List<String> notes = new ArrayList<>(whole.notes());
      notes.addAll(fitted.notes());
      return new FittedPack(sheets, List.of(), List.of(), notes);
    }
  }
}
