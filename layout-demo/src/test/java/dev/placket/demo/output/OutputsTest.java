package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.placket.demo.Run;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.output.Staging;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written: whole or not at all, by one run at a time, over nothing that exists. */
class OutputsTest {
  private static final String GOOD =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  @TempDir Path dir;

  private Path flats(String in, String drawing) throws IOException {
    Path flats = Files.createDirectories(dir.resolve(in).resolve("style"));
    Files.writeString(flats.resolve("front.svg"), drawing);
    return flats;
  }

  private static Map<String, byte[]> files(String... names) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name : names) {
      files.put(name, name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    return files;
  }

  private static Map<String, String> all(Path folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        byte[] bytes = Files.readAllBytes(file);
        all.put(
            file.getFileName().toString(),
            new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }

  /** Whatever two runs do at once, one of them stands there whole and nothing else does. */
  @Test
  void twoRunsIntoOneFolderLeaveOneOfThemWhole() throws Exception {
    Path a = flats("a", GOOD);
    Path b = flats("b", GOOD.replace("width='70'", "width='30'"));
    assertEquals(0, Run.of("fit", a, "--out", dir.resolve("of-a")).code());
    assertEquals(0, Run.of("fit", b, "--out", dir.resolve("of-b")).code());
    List<Map<String, String>> alone = List.of(all(dir.resolve("of-a")), all(dir.resolve("of-b")));
    ExecutorService both = Executors.newFixedThreadPool(2);
    try {
      for (int i = 0; i < 8; i++) {
        Path out = dir.resolve("both-" + i);
        boolean overwrite = i % 2 == 0;
        List<Future<Run>> runs =
            both.invokeAll(List.of(fit(a, out, overwrite), fit(b, out, overwrite)));
        List<Integer> codes = new ArrayList<>();
        for (Future<Run> run : runs) {
          codes.add(run.get().code());
        }
        codes.sort(null);
        assertEquals(overwrite ? List.of(0, 0) : List.of(0, 2), codes);
        assertTrue(alone.contains(all(out)), "of one run: " + all(out).keySet());
      }
    } finally {
      both.shutdownNow();
    }
  }

  private static Callable<Run> fit(Path flats, Path out, boolean overwrite) {
    return () ->
        overwrite
            ? Run.of("fit", flats, "--out", out, "--overwrite")
            : Run.of("fit", flats, "--out", out);
  }

  /** The same from two processes, since locks of one process say nothing of another. */
  @Test
  void twoProcessesIntoOneFolderLeaveOneOfThemWhole() throws Exception {
    Path a = flats("a", GOOD);
    Path b = flats("b", GOOD.replace("width='70'", "width='30'"));
    assertEquals(0, Run.of("fit", a, "--out", dir.resolve("of-a")).code());
    assertEquals(0, Run.of("fit", b, "--out", dir.resolve("of-b")).code());
    Path out = dir.resolve("both");
    Process one = process(a, out);
    Process two = process(b, out);
    List<Integer> codes = new ArrayList<>(List.of(one.waitFor(), two.waitFor()));
    codes.sort(null);
    assertEquals(List.of(0, 2), codes);
    List<Map<String, String>> alone = List.of(all(dir.resolve("of-a")), all(dir.resolve("of-b")));
    assertTrue(alone.contains(all(out)), "of one run: " + all(out).keySet());
  }

  /** While a run in this process has begun, one in another must not even look at its parts. */
  @Test
  void aRunInAnotherProcessIsRefusedWhileOneHasBegun() throws Exception {
    Path flats = flats("a", GOOD);
    Path out = dir.resolve("out");
    try (Staging staging = Staging.open(out, true)) {
      try (OutputStream to = staging.begin("mine.txt").out()) {
        to.write('m');
      }
      assertEquals(2, process(flats, out).waitFor());
      staging.finish();
    }
    assertEquals(Map.of("mine.txt", "m"), all(out));
  }

  private static Process process(Path flats, Path out) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            "dev.placket.demo.Main",
            "fit",
            flats.toString(),
            "--out",
            out.toString())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  /** A lock that another process holds; here it is held by this one, which Java tells apart. */
  @Test
  void aFolderThatAnotherRunHasIsRefusedAndAnAbandonedOneIsNot() throws Exception {
    Path lock = dir.resolve(".placket-lock");
    Path stale = dir.resolve(".placket-00000000-0000-0000-0000-000000000000.part");
    Path own = Files.writeString(dir.resolve(".placket-mine.part"), "mine");
    Files.writeString(stale, "half");
    try (FileChannel held =
        FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      held.lock();
      Refusal refusal =
          assertThrows(Refusal.class, () -> new Outputs(dir, true).write(files("a.pdf")));
      assertTrue(refusal.messages().get(0).contains("another run"), refusal.messages()::toString);
      assertTrue(Files.exists(stale), "it may be that run's");
    }
    new Outputs(dir, true).write(files("a.pdf"));
    assertEquals("a.pdf", Files.readString(dir.resolve("a.pdf")));
    assertEquals("mine", Files.readString(own));
    assertFalse(Files.exists(stale) || Files.exists(lock));
  }

  /** Links with the names that once were used, and with that of the lock. */
  @Test
  void nothingIsWrittenThroughALink() throws Exception {
    Path out = Files.createDirectory(dir.resolve("out"));
    Path target = Files.writeString(dir.resolve("target"), "mine");
    Files.createSymbolicLink(out.resolve(".placket-a.pdf.part"), target);
    Files.createSymbolicLink(out.resolve("a.pdf"), target);
    Refusal exists =
        assertThrows(Refusal.class, () -> new Outputs(out, false).write(files("a.pdf")));
    assertTrue(exists.messages().get(0).contains("already exists"));
    new Outputs(out, true).write(files("a.pdf"));
    assertEquals("mine", Files.readString(target));
    assertEquals("a.pdf", Files.readString(out.resolve("a.pdf")));
    Files.createSymbolicLink(out.resolve(".placket-lock"), target);
    assertThrows(Refusal.class, () -> new Outputs(out, true).write(files("b.pdf")));
    assertEquals("mine", Files.readString(target));
    assertFalse(Files.exists(out.resolve("b.pdf")));
  }

  @Test
  void aLinkToNothingExists() throws Exception {
    Path nowhere = dir.resolve("nowhere");
    Files.createSymbolicLink(dir.resolve("a.pdf"), nowhere);
    Outputs outputs = new Outputs(dir, false);
    assertEquals(1, outputs.obstacles(List.of("a.pdf")).size());
    assertThrows(Refusal.class, () -> outputs.write(files("a.pdf")));
    assertTrue(Files.isSymbolicLink(dir.resolve("a.pdf")));
    assertFalse(Files.exists(nowhere));
    Path link = Files.createSymbolicLink(dir.resolve("out"), nowhere);
    List<Fault> said = new Outputs(link, false).obstacles(List.of("a.pdf"));
    assertTrue(said.toString().contains("is a link to nothing"), said::toString);
  }

  /** The third name is taken by a folder, where no file can go. */
  @Test
  void whereOneFileCannotBePutTheOthersAreAsTheyWere() throws Exception {
    for (boolean overwrite : new boolean[] {false, true}) {
      Path out = Files.createDirectories(dir.resolve("out-" + overwrite));
      Files.createDirectory(out.resolve("c.json"));
      if (overwrite) {
        Files.writeString(out.resolve("a.pdf"), "before");
      }
      Refusal refusal =
          assertThrows(
              Refusal.class,
              () -> new Outputs(out, overwrite).write(files("a.pdf", "b.png", "c.json")));
      assertEquals(Refusal.Kind.INPUT, refusal.kind());
      List<String> left = new ArrayList<>();
      try (Stream<Path> files = Files.list(out)) {
        files.forEach(f -> left.add(f.getFileName().toString()));
      }
      left.sort(null);
      assertEquals(overwrite ? List.of("a.pdf", "c.json") : List.of("c.json"), left);
      if (overwrite) {
        assertEquals("before", Files.readString(out.resolve("a.pdf")));
      }
    }
  }

  @Test
  void aRunThatIsRefusedLeavesNoFolder() throws Exception {
    Path out = dir.resolve("deep/er/out");
    try (Staging staging = Staging.open(out, false)) {
      try (OutputStream to = staging.begin("a.png").out()) {
        to.write(1);
      }
    }
    assertFalse(Files.exists(dir.resolve("deep")));
    new Outputs(out, false).write(files("a.png"));
    assertArrayEquals(new String[] {"a.png"}, all(out).keySet().toArray());
  }

  /** What umask says, as for files of any other program. */
  @Test
  void copiesMayBeReadByWhomTheUserLets() throws Exception {
    assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
    Path front = flats("a", GOOD).resolve("front.svg");
    Path out = dir.resolve("ready");
    assertEquals(0, Run.of("prepare", front, "--at", "50mm", "--out", out).code());
    assertEquals(
        Files.getPosixFilePermissions(front),
        Files.getPosixFilePermissions(out.resolve("front.png")));
  }
}
