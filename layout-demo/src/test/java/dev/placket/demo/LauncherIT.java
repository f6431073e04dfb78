package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The command as the build laid it out, started as people start it. */
class LauncherIT {
  private static final Path HOME = Path.of(System.getProperty("placket.folder"));
  private static final Path JDK = Path.of(System.getProperty("java.home"));
  private static final Path FLATS =
      Path.of(System.getProperty("placket.root"), "layout-demo/src/demo/mg-3107/flats");

  @TempDir private Path work;

  @BeforeEach
  void shell() {
    assumeTrue(File.separatorChar == '/', "a POSIX shell; Windows has placket.cmd");
  }

  /** The JDK of the build, and where Linux has them, all others. */
  static List<Path> jdks() throws IOException {
    List<Path> all = new ArrayList<>(List.of(JDK));
    Path place = Path.of("/usr/lib/jvm");
    if (Files.isDirectory(place)) {
      try (Stream<Path> installed = Files.list(place)) {
        installed.filter(p -> Files.isExecutable(p.resolve("bin/java"))).sorted().forEach(all::add);
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("jdks")
  void startsSilentlyOnEveryJdk(Path jdk) throws Exception {
    Started version = start(HOME, jdk, "", "--version");
    assertEquals("placket 0.1.0\n", version.out());
    assertEquals("", version.err());
    assertEquals(0, version.code());
  }

  @Test
  void readsItsClassesFromTheArchive() throws Exception {
    assertTrue(shared(HOME), "classes come from " + HOME.resolve("lib/placket.jsa"));
  }

  @Test
  void movedItStartsAsWell() throws Exception {
    Path moved = moved("moved to");
    Started there = start(moved, JDK, "", "fit", FLATS.toString(), "--out", "made");
    assertEquals("", there.err());
    assertEquals(0, there.code(), there.out());
    Started here = start(HOME, JDK, "", "fit", FLATS.toString(), "--out", "again");
    assertEquals(0, here.code(), here.out());
    assertEquals(-1, Files.mismatch(work.resolve("made/fit.json"), work.resolve("again/fit.json")));
  }

  /** Without a blank in the folder's name: JDK 17 shares only its own classes there. */
  @Test
  void movedItCanWriteItsArchiveAgain() throws Exception {
    Path moved = moved("moved");
    Started dump = start(moved, JDK, "-Xshare:dump");
    assertEquals(0, dump.code(), dump.err());
    assertTrue(shared(moved), "classes come from the archive written after the move");
  }

  @Test
  void startsWithoutTheArchive() throws Exception {
    Path moved = moved("moved to");
    Files.delete(moved.resolve("lib/placket.jsa"));
    Started version = start(moved, JDK, "", "--version");
    assertEquals("placket 0.1.0\n", version.out() + version.err());
  }

  /** The code of a call at fault (README). */
  @Test
  void passesExitCodes() throws Exception {
    Started none = start(HOME, JDK, "", "fit", "no such folder");
    assertEquals(2, none.code());
    assertTrue(none.err().contains("no such folder"), none.err());
  }

  @Test
  void theJarStartsByItself() throws Exception {
    try (Stream<Path> lib = Files.list(HOME.resolve("lib"))) {
      Path jar =
          lib.filter(p -> p.getFileName().toString().startsWith("layout-demo-")).findAny().get();
      String java = JDK.resolve("bin/java").toString();
      Started version =
          Started.of(work, Map.of(), List.of(java, "-jar", jar.toString(), "--version"));
      assertEquals("placket 0.1.0\n", version.out() + version.err());
    }
  }

  /** Whether the class that is started came from an archive, by Java's own log of classes. */
  private boolean shared(Path home) throws Exception {
    Path log = work.resolve("classes.log");
    Started run = start(home, JDK, "-Xlog:class+load:file=" + log, "--version");
    assertEquals(0, run.code(), run.err());
    return Files.readString(log)
        .lines()
        .anyMatch(l -> l.contains(" dev.placket.demo.Main source: shared objects file"));
  }

  private Path moved(String folder) throws IOException {
    Path moved = work.resolve(folder).resolve("placket");
    try (Stream<Path> all = Files.walk(HOME)) {
      for (Path from : all.toList()) {
        Path to = moved.resolve(HOME.relativize(from).toString());
        Files.createDirectories(to.getParent());
        Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
    return moved;
  }

  private Started start(Path home, Path jdk, String options, String... arguments)
      throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(List.of(home.resolve("bin/placket").toString()));
    line.addAll(List.of(arguments));
    Map<String, String> environment =
        Map.of("JAVA_HOME", jdk.toString(), "PLACKET_JAVA_OPTS", options);
    return Started.of(work, environment, line);
  }
}
