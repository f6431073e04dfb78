package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that once broke a reader, found by fuzzing, and the seeds it starts from. */
class FindingsTest {
  private static List<Path> files(String folder) throws IOException, URISyntaxException {
    Path there = Path.of(Objects.requireNonNull(FindingsTest.class.getResource(folder)).toURI());
    try (Stream<Path> all = Files.walk(there)) {
      return all.filter(Files::isRegularFile)
          .filter(f -> !f.toString().endsWith(".md"))
          .sorted()
          .toList();
    }
  }

  static Stream<Path> findings() throws IOException, URISyntaxException {
    return Stream.concat(files("findings").stream(), files("formats").stream());
  }

  @ParameterizedTest
  @MethodSource("findings")
  void endsInAPictureOrOneMessage(Path file) throws IOException {
    ReadersFuzz.fuzzerTestOneInput(Files.readAllBytes(file));
  }

  @Test
  void thereAreSeeds() throws Exception {
    assertFalse(files("formats").isEmpty());
  }
}
