package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code bin/placket} gives to Java: a stand-in for {@code java} prints its arguments. */
class LauncherTest {
  private static final Path SOURCE =
      Path.of(System.getProperty("placket.root"), "layout-demo/src/launcher/bin/placket");

  /** Its own number, the folder it works in, each argument in brackets; 7 is its exit code. */
  private static final String JAVA =
      """
      #!/bin/sh
      echo $$
      pwd
      printf '[%s]' "$@"
      exit 7
      """;

  @TempDir private Path work;
  private Path home;
  private Path launcher;
  private Path jdk;

  @BeforeEach
  void layOut() throws IOException {
    assumeTrue(File.separatorChar == '/', "a POSIX shell; Windows has placket.cmd");
    work = work.toRealPath();
    home = Files.createDirectories(work.resolve("a folder/placket"));
    Files.createDirectories(home.resolve("lib"));
    launcher = script("a folder/placket/bin/placket", Files.readString(SOURCE));
    jdk = work.resolve("a jdk");
    script("a jdk/bin/java", JAVA);
  }

  @Test
  void passesArgumentsFolderAndExitCode() throws Exception {
    List<String> typed = List.of("fit", "a b", "it's", "\"q\"", "*", "$HOME", "", "a\nb", "-n");
    Path folder = Files.createDirectory(work.resolve("else where"));
    Started java = start(folder, Map.of(), launcher.toString(), typed);
    assertEquals(7, java.code(), java.err());
    assertEquals(java.pid() + "\n" + folder + "\n", head(java), "java replaces the shell");
    String last = "[-jar][" + jar() + "]" + brackets(typed);
    assertTrue(java.out().endsWith(last), java.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"absolute", "relative", "chain", "folder"})
  void followsLinks(String kind) throws Exception {
    Path bin = Files.createDirectories(work.resolve("my bin"));
    Path link = bin.resolve("placket");
    switch (kind) {
      case "absolute" -> Files.createSymbolicLink(link, launcher);
      case "relative" -> Files.createSymbolicLink(link, bin.relativize(launcher));
      case "chain" -> {
        Files.createSymbolicLink(bin.resolve("first"), bin.relativize(launcher));
        Files.createSymbolicLink(link, Path.of("first"));
      }
      default -> {
        Files.createSymbolicLink(bin.resolve("home"), home);
        link = bin.resolve("home/bin/placket");
      }
    }
    Started java = start(work, Map.of(), link.toString(), List.of());
    assertTrue(java.out().endsWith("[-jar][" + jar() + "]"), java.out() + java.err());
  }

  @Test
  void startsByItsPlainNameToo() throws Exception {
    Map<String, String> path = Map.of("PATH", home.resolve("bin") + ":" + System.getenv("PATH"));
    for (String command : List.of("placket", "sh placket", "sh ./placket", "cd ..; bin/placket")) {
      Started java = start(home.resolve("bin"), path, "/bin/sh", List.of("-c", command));
      assertTrue(java.out().endsWith("[-jar][" + jar() + "]"), command + java.out() + java.err());
    }
  }

  @Test
  void namesTheArchiveWhereThereIsOne() throws Exception {
    Started without = start(work, Map.of(), launcher.toString(), List.of());
    assertEquals(-1, without.out().indexOf("SharedArchiveFile"), without.out());
    Path archive = Files.createFile(home.resolve("lib/placket.jsa"));
    Started with = start(work, Map.of(), launcher.toString(), List.of());
    assertTrue(with.out().contains("[-XX:SharedArchiveFile=" + archive + "]"), with.out());
  }

  @Test
  void writesTheArchiveWhenAsked() throws Exception {
    Map<String, String> dump = Map.of("PLACKET_JAVA_OPTS", "-Xshare:dump");
    Started java = start(work, dump, launcher.toString(), List.of());
    String lib = home.resolve("lib").toString();
    String options =
        ("[-XX:SharedClassListFile=%s/placket.classlist][-XX:SharedArchiveFile=%s/placket.jsa]"
                + "[-Xshare:dump][-jar][%s]")
            .formatted(lib, lib, jar());
    assertTrue(java.out().endsWith(options), java.out());
  }

  @Test
  void placesTheOptionsOfTheUserLastSoThatTheyWin() throws Exception {
    Map<String, String> options = Map.of("PLACKET_JAVA_OPTS", " -Xmx2g  -Dsign=* ");
    Files.createFile(home.resolve("lib/placket.jsa"));
    Started java = start(home.resolve("lib"), options, launcher.toString(), List.of("fit"));
    String last = "[-Xmx2g][-Dsign=*][-jar][" + jar() + "][fit]";
    assertTrue(java.out().endsWith(last), java.out());
  }

  @Test
  void takesJavaFromThePathWithoutJavaHome() throws Exception {
    Map<String, String> path = Map.of("JAVA_HOME", "", "PATH", jdk.resolve("bin").toString());
    Started java = start(work, path, launcher.toString(), List.of());
    assertTrue(java.out().endsWith("[-jar][" + jar() + "]"), java.out() + java.err());
  }

  @Test
  void refusesWhereThereIsNoJava() throws Exception {
    Map<String, String> none = Map.of("JAVA_HOME", work.toString());
    Started wrong = start(work, none, launcher.toString(), List.of());
    assertEquals(2, wrong.code());
    assertTrue(
        wrong.err().startsWith("placket: JAVA_HOME is " + work + ", which has no bin/java;"));
    Map<String, String> empty = Map.of("JAVA_HOME", "", "PATH", work.toString());
    Started nowhere = start(work, empty, launcher.toString(), List.of());
    assertEquals(2, nowhere.code());
    assertTrue(nowhere.err().startsWith("placket: no java on the PATH;"), nowhere.err());
  }

  /** The name in the source; the build puts that of the jar there. */
  private Path jar() {
    return home.resolve("lib/@project.build.finalName@.jar");
  }

  private Started start(
      Path folder, Map<String, String> environment, String command, List<String> arguments)
      throws IOException, InterruptedException {
    Map<String, String> all = new HashMap<>(Map.of("JAVA_HOME", jdk.toString()));
    all.putAll(environment);
    List<String> line = new ArrayList<>(List.of(command));
    line.addAll(arguments);
    return Started.of(folder, all, line);
  }

  private static String head(Started java) {
    return java.out().substring(0, java.out().indexOf('['));
  }

  private static String brackets(List<String> arguments) {
    return "[" + String.join("][", arguments) + "]";
  }

  private Path script(String name, String text) throws IOException {
    Path file = work.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }
}
