package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import dev.placket.demo.pack.ExamplePack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code fit --check} does everything but write files, whatever the flats come from. */
class CheckTest {
  @TempDir Path dir;

  /** The numbers are those of a run that writes; the check leaves no file, not even a folder. */
  private void check(int code, Object... call) throws IOException {
    Path out = dir.resolve("out");
    List<Object> args = new ArrayList<>(List.of("fit"));
    args.addAll(List.of(call));
    args.addAll(List.of("--json", "--out", out));
    Run full = Run.of(args.toArray());
    args.set(args.size() - 1, dir.resolve("checked"));
    args.add("--check");
    Run checked = Run.of(args.toArray());
    assertEquals(code, full.code(), full.err());
    assertEquals(code, checked.code(), checked.err());
    assertEquals(full.out(), checked.out());
    assertFalse(Files.exists(dir.resolve("checked")));
    if (code != 4) {
      assertTrue(checked.err().contains("Checked only, nothing written."), checked.err());
      assertFalse(checked.err().contains("Send "), checked.err());
      assertFalse(full.err().contains("Checked only"), full.err());
      assertEquals(Files.readString(out.resolve("fit.json")), checked.out());
    }
  }

  @Test
  void aFolder() throws IOException {
    check(0, Command.plain(dir.resolve("flats")));
  }

  @Test
  void aFolderOverTheSizeLimit() throws IOException {
    check(3, Command.plain(dir.resolve("flats")), "--max-size", "0.0001");
  }

  @Test
  void aDescription() throws IOException {
    check(0, ExamplePack.write(dir, ExamplePack.TEXT), "--blank");
  }

  @Test
  void aWorkbook() throws IOException {
    Path flats = Command.plain(dir.resolve("flats"));
    check(0, flats, "--onto", RuledWorkbooks.write("block", dir));
  }

  @Test
  void noRoom() throws IOException {
    String large = ExamplePack.TEXT.replace("unit: 10mm}", "unit: 10mm, least: 900mm}");
    check(4, ExamplePack.write(dir, large));
  }

  /** What a run would refuse to overwrite, the check reports. */
  @Test
  void existingFiles() throws IOException {
    Path flats = Command.plain(dir.resolve("flats"));
    assertEquals(0, Run.of("fit", flats, "-q").code());
    Run checked = Run.of("fit", flats, "--check");
    assertEquals(2, checked.code(), checked.err());
    assertTrue(checked.err().contains("--overwrite"), checked.err());
    assertEquals(0, Run.of("fit", flats, "--check", "--overwrite").code());
  }
}
