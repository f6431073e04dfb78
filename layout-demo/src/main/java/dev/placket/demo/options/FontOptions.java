package dev.placket.demo.options;

import dev.placket.packs.folder.Missing;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.typeface.Typefaces;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;

/** The option that gives typefaces for the text of drawings. */
public final class FontOptions {
  @Option(
      names = "--font",
      paramLabel = "FILE",
      description =
          "A TrueType file for text of drawings in its family; repeatable. Other text is set in"
              + " Liberation Sans.")
  private List<Path> files = List.of();

  /**
   * The typefaces that the option gives.
   *
   * @throws Refusal if a file is not a typeface
   */
  public Typefaces typefaces() throws Refusal {
    if (files.isEmpty()) {
      return Typefaces.SHIPPED;
    }
    for (Path file : files) {
      Missing.check(file);
    }
    try {
      return Typefaces.of(files.stream().map(PictureSource::of).toList());
    } catch (PictureException e) {
      throw Refusal.input(e.fault());
    }
  }
}
