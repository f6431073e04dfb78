package dev.placket.demo.workbook;

import dev.placket.demo.Main;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** Calls the command as a designer does. */
final class Command {
  static final String PLAIN =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  String said = "";

  int fit(Path folder, Path onto, Path out, String... more) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    List<String> fixed =
        List.of("fit", folder.toString(), "--onto", onto.toString(), "--out", out.toString());
    String[] args = Stream.concat(fixed.stream(), Stream.of(more)).toArray(String[]::new);
    int code = Main.run(args, stream, stream);
    said = bytes.toString(StandardCharsets.UTF_8);
    return code;
  }

  /** A folder with a front and a back drawn here. */
  static Path plain(Path in) throws IOException {
    Path folder = Files.createDirectories(in);
    Files.writeString(folder.resolve("front.svg"), PLAIN);
    Files.writeString(folder.resolve("back.svg"), PLAIN.replace("'80'", "'78'"));
    return folder;
  }

  /** A folder with front and back of one of the outside garments; the test is skipped without. */
  static Path garment(String name, Path in) throws IOException {
    Path folder = Files.createDirectories(in.resolve(name));
    for (String view : List.of("front", "back")) {
      Files.copy(shared().resolve(name + "-" + view + ".svg"), folder.resolve(view + ".svg"));
    }
    return folder;
  }

  static Path shared() {
    Path at = Path.of(System.getProperty("placket.root", ".")).toAbsolutePath().normalize();
    for (Path p = at; p != null; p = p.getParent()) {
      if (Files.isDirectory(p.resolve("shared/flats"))) {
        return p.resolve("shared/flats");
      }
    }
    return Assumptions.abort("skipped: no shared/flats beside or above " + at);
  }
}
