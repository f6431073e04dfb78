package dev.placket.benchmarks.rasters;

import dev.placket.benchmarks.outside.OutsideProgram;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What other libraries make of a picture, through their commands where these are installed. */
final class SecondLibraries {
  private static final int SECONDS = 30;

  private final Path work;
  private final Path srgb;
  private @Nullable Path asked;
  private String answer = "";

  /**
   * @param work a folder for what the commands write
   */
  SecondLibraries(Path work) throws IOException {
    this.work = work;
    this.srgb = work.resolve("srgb.icc");
    Files.write(srgb, ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
  }

  /** One way to decode a picture. */
  record Way(String name, List<List<String>> commands) {}

  /** The ways that can be tried for a file, the surest first. */
  List<Way> ways(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    List<Way> ways = new ArrayList<>();
    String out = work.resolve("out.pam").toString();
    if (OutsideProgram.installed("dwebp") && name.endsWith(".webp")) {
      ways.add(new Way("libwebp", List.of(List.of("dwebp", file.toString(), "-pam", "-o", out))));
    }
    if (OutsideProgram.installed("convert")) {
      ways.add(new Way("ImageMagick", List.of(convert(file + "[0]", out))));
    }
    if (OutsideProgram.installed("tiff2rgba") && name.matches(".*\\.tiff?") && !profiled(file)) {
      String rgba = work.resolve("rgba.tif").toString();
      ways.add(
          new Way(
              "libtiff",
              List.of(
                  List.of("tiff2rgba", "-c", "none", file.toString(), rgba), convert(rgba, out))));
    }
    if (OutsideProgram.installed("vips")) {
      String png = work.resolve("vips.png").toString();
      ways.add(
          new Way(
              "libvips",
              List.of(List.of("vips", "autorot", file.toString(), png), convert(png, out))));
    }
    return ways;
  }

  /** Decoded that way, or null where the library refuses the file. */
  @Nullable Argb decoded(Way way) throws IOException {
    Path out = work.resolve("out.pam");
    Files.deleteIfExists(out);
    for (List<String> command : way.commands()) {
      if (!OutsideProgram.ran(command, SECONDS)) {
        return null;
      }
    }
    return Files.isRegularFile(out) ? Argb.pam(out) : null;
  }

  /** Whether a colour profile stands in the file. */
  boolean profiled(Path file) {
    return said(file).contains("profile=");
  }

  /** Bits of a sample, 8 where it cannot be told. */
  int bits(Path file) {
    String first = said(file).split(" ", 2)[0];
    return first.matches("\\d{1,2}") ? Integer.parseInt(first) : 8;
  }

  /** Bits and profile of a file; the answer for the last one is kept. */
  private String said(Path file) {
    if (!file.equals(asked)) {
      String format = "%z %[profile:icc]";
      List<String> command = List.of("identify", "-quiet", "-format", format, file + "[0]");
      String all =
          OutsideProgram.installed("identify") ? OutsideProgram.said(command, SECONDS) : "";
      int space = all.indexOf(' ');
      answer = space < 0 ? all : all.substring(0, space) + " profile=";
      asked = file;
    }
    return answer;
  }

  private List<String> convert(String from, String to) {
    List<String> command = new ArrayList<>(List.of("convert", "-quiet", from, "-auto-orient"));
    boolean profiled = profiled(Path.of(from.replace("[0]", "")));
    command.addAll(
        profiled ? List.of("-profile", srgb.toString()) : List.of("-colorspace", "sRGB"));
    // A description would stand in the head; opaque pictures would be written without alpha.
    command.addAll(
        List.of("-strip", "-type", "TrueColorAlpha", "-alpha", "set", "-depth", "8", "pam:" + to));
    return command;
  }
}
