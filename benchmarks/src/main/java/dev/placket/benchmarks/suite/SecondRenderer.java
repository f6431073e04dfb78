package dev.placket.benchmarks.suite;

import dev.placket.benchmarks.outside.OutsideProgram;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** A program that renders drawings, called as librsvg's is; it sees the suite's fonts alone. */
final class SecondRenderer {
  private static final int SECONDS = 20;

  /** What the suite's pictures were made with for the kinds of CSS. */
  private static final Map<String, String> KINDS =
      Map.of(
          "serif", "Noto Serif",
          "sans-serif", "Noto Sans",
          "monospace", "Noto Mono",
          "cursive", "Yellowtail",
          "fantasy", "Sedgwick Ave Display");

  private final String program;
  private final @Nullable Path fontSettings;

  /**
   * Prepares a run.
   *
   * @param work a folder for the settings of its fonts, and their cache
   */
  SecondRenderer(String program, @Nullable Path fonts, Path work) throws IOException {
    this.program = program;
    this.fontSettings = fonts == null ? null : settings(fonts, work);
  }

  private static Path settings(Path fonts, Path work) throws IOException {
    StringBuilder xml = new StringBuilder("<?xml version=\"1.0\"?><fontconfig>");
    xml.append("<dir>").append(fonts.toAbsolutePath()).append("</dir>");
    xml.append("<cachedir>").append(work.resolve("cache").toAbsolutePath()).append("</cachedir>");
    KINDS.forEach(
        (kind, family) ->
            xml.append("<alias binding=\"strong\"><family>")
                .append(kind)
                .append("</family><prefer><family>")
                .append(family)
                .append("</family></prefer></alias>"));
    return Files.writeString(work.resolve("fonts.conf"), xml.append("</fontconfig>"));
  }

  boolean installed() {
    return OutsideProgram.installed(program);
  }

  String version() {
    return OutsideProgram.version(program);
  }

  /** The rendering, or null if the program refuses, takes too long or is missing. */
  @Nullable BufferedImage render(Path svg, int width, int height) throws IOException {
    if (!installed()) {
      return null;
    }
    ProcessBuilder call =
        new ProcessBuilder(
            List.of(
                program,
                "--width",
                Integer.toString(width),
                "--height",
                Integer.toString(height),
                svg.toAbsolutePath().toString()));
    if (fontSettings != null) {
      call.environment().put("FONTCONFIG_FILE", fontSettings.toString());
    }
    Process process = call.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    byte[] png = process.getInputStream().readAllBytes();
    try {
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
        return null;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return null;
    } finally {
      process.destroyForcibly();
    }
    return ImageIO.read(new ByteArrayInputStream(png));
  }
}
