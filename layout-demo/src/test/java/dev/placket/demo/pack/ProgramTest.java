package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.flat.Role;
import dev.placket.packs.compose.ComposedPack;
import dev.placket.packs.compose.Composer;
import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.Faults;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackGrid;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackWindow;
import dev.placket.packs.description.Places;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.description.Words;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program builds the same pack in a dozen lines, without a description. */
class ProgramTest {
  @TempDir Path dir;

  @Test
  void aPackIsBuiltInAFewLines() throws IOException, Refusal {
    ExamplePack.write(dir, ExamplePack.TEXT);
    PackSheet sheet =
        PackSheet.of(
            "Flat sheet",
            PackGrid.of("views details"),
            Map.of("views", PackWindow.OPEN, "details", PackWindow.OPEN),
            Map.of(
                "front", PackFlat.of("front.svg", Role.FRONT, "views"),
                "pocket", PackFlat.of("pocket.svg", Role.DETAIL, "details")));
    Pack pack = Pack.of(Map.of("style-number", Words.of("MG-3107")), Map.of("flats", sheet));
    Path beside = dir.resolve("pack");
    Described described = new Described(beside, pack, Places.none(), new Faults("pack"));
    ComposedPack made =
        new Composer(
                described,
                DensityTargets.DEFAULT,
                false,
                Composer.lettering(described),
                Reading.DEFAULT,
                PackLimits.DEFAULT.rows(),
                RangeReader.NONE)
            .pack(Map.of());
    assertEquals("MG-3107", made.fileName());
    assertEquals(2, made.sheets().get(0).items().size());
  }
}
