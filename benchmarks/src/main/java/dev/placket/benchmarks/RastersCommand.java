package dev.placket.benchmarks;

import dev.placket.benchmarks.outside.OutsideProgram;
import dev.placket.benchmarks.rasters.PictureFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges how pictures are decoded by what second libraries make of them. */
@Command(
    name = "rasters",
    description = {
      "Decodes pictures and compares them with ImageMagick, libtiff, libvips and libwebp, where these"
          + " are installed.",
      "Right is within one level of 255 of any of them, two for more than 8 bits or a colour profile.",
      "Prints each picture that is not right, and totals; ends with 1 if one is wrong without a note"
          + " and not listed, or crashes."
    },
    mixinStandardHelpOptions = true)
final class RastersCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "DIR", arity = "1..*", description = "Folders of pictures, or files.")
  private List<Path> from = List.of();

  @Option(
      names = "--known",
      paramLabel = "FILE",
      description = "Pictures that may differ, one to a line: its name, a tab, the reason.")
  private @Nullable Path known;

  @Option(names = "--all", description = "Print the right ones as well.")
  private boolean all;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Path work = java.nio.file.Files.createTempDirectory("rasters");
    try {
      for (String program : List.of("convert", "dwebp", "tiff2rgba", "vips")) {
        out.println(
            "# " + program + (OutsideProgram.installed(program) ? "" : " is not installed"));
      }
      PictureFolder folder = new PictureFolder(work, known);
      folder.judge(from, all, out::println);
      folder.totals().forEach(out::println);
      out.flush();
      return folder.faults() == 0 ? 0 : 1;
    } finally {
      Runs.delete(work);
    }
  }
}
