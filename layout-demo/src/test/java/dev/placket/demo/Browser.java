package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Chromium without a window, where it is on the path; a test that needs it is skipped elsewhere.
 */
public final class Browser {
  private Browser() {}

  /**
   * The document of a page once its scripts have run.
   *
   * @param work a folder for what the browser leaves
   */
  public static String document(Path page, Path work) throws IOException, InterruptedException {
    String browser = path();
    assumeTrue(!browser.isEmpty(), "needs chromium on the path");
    Path out = work.resolve("dom.html");
    Process process =
        new ProcessBuilder(
                browser,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--virtual-time-budget=60000",
                "--window-size=1400,2000",
                "--user-data-dir=" + work.resolve("profile"),
                "--dump-dom",
                page.toUri().toString())
            .redirectOutput(out.toFile())
            .redirectError(work.resolve("err.txt").toFile())
            .start();
    assertTrue(process.waitFor(5, TimeUnit.MINUTES), "the browser does not end");
    return Files.readString(out, StandardCharsets.UTF_8);
  }

  /**
   * Prints a page as a PDF of the size that it asks for.
   *
   * @param work a folder for what the browser leaves
   */
  public static void print(Path page, Path pdf, Path work)
      throws IOException, InterruptedException {
    String browser = path();
    assumeTrue(!browser.isEmpty(), "needs chromium on the path");
    Process process =
        new ProcessBuilder(
                browser,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--no-pdf-header-footer",
                "--user-data-dir=" + work.resolve("profile"),
                "--print-to-pdf=" + pdf,
                page.toUri().toString())
            .redirectOutput(work.resolve("printed.txt").toFile())
            .redirectError(work.resolve("err.txt").toFile())
            .start();
    assertTrue(process.waitFor(5, TimeUnit.MINUTES), "the browser does not end");
    assertTrue(Files.exists(pdf), "the browser printed nothing");
  }

  private static String path() {
    String path = System.getenv().getOrDefault("PATH", "");
    return Stream.of("chromium", "chromium-browser")
        .flatMap(name -> Arrays.stream(path.split(File.pathSeparator)).map(p -> Path.of(p, name)))
        .filter(Files::isExecutable)
        .map(Path::toString)
        .findFirst()
        .orElse("");
  }
}
