package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Revised values go into the list and nowhere else, and change no earlier verdict. */
class ReviseTest {
  private static final String ROWS =
      """
      fit-1,M,A,,,50,51.1,,,"stays, \"\"as it is\"\"\",,,
      fit-2,M,A,,,,51.2,51,,,,,
      fit-2,M,B,,,,59.4,60.5,,,,,
      set,S,B,,,,59.1,,,,,,
      """;

  @TempDir Path dir;

  private List<String> verdicts(Path pack) throws IOException {
    Run run = SamplePack.fit(pack);
    assertEquals(0, run.code(), run.err());
    JsonNode fit = new ObjectMapper().readTree(Files.readString(dir.resolve("out/fit.json")));
    List<String> verdicts = new ArrayList<>();
    for (JsonNode sample : fit.get("samples")) {
      for (JsonNode size : sample.get("sizes")) {
        for (JsonNode p : size.get("points")) {
          if (!p.get("difference").isNull()) {
            verdicts.add(
                sample.get("sample").asText()
                    + " "
                    + p.get("point").asText()
                    + " "
                    + p.get("shown").asText()
                    + " "
                    + p.get("verdict").asText());
          }
        }
      }
    }
    return verdicts;
  }

  @Test
  void showsThenWritesAndKeepsEveryVerdict() throws IOException {
    Path pack = SamplePack.write(dir, ROWS);
    List<String> before = verdicts(pack);
    assertEquals(
        List.of(
            "fit-1 A +1.1 over", "fit-2 A +1.2 over", "fit-2 B −0.6 under", "set B +0.1 within"),
        before);
    String yaml = Files.readString(pack);
    String csv = Files.readString(dir.resolve("fits.csv"));

    Run shown = Run.of("revise", pack, "fit-2");
    assertEquals(0, shown.code(), shown.err());
    assertEquals(
        """
        Point A, size M: 50 becomes 51, and all other sizes change by as much
        Point B, size M: 60 becomes 60.5, and all other sizes change by as much
          fit-1, size M, keeps 50 as asked at A
          fit-2, size M, keeps 50 as asked at A
          fit-2, size M, keeps 60 as asked at B
          set, size S, keeps 59 as asked at B
        Nothing written. With --write, this changes fits.csv, pack.yaml.
        """,
        shown.out());
    assertEquals(yaml, Files.readString(pack));
    assertEquals(csv, Files.readString(dir.resolve("fits.csv")));

    Run written = Run.of("revise", pack, "fit-2", "--write");
    assertEquals(0, written.code(), written.err());
    assertEquals(
        yaml.replace("value: 50,", "value: 51,").replace("value: 60,", "value: 60.5,"),
        Files.readString(pack));
    assertEquals(
        csv.replace("fit-1,M,A,,,", "fit-1,M,A,50,1,")
            .replace("fit-2,M,A,,,", "fit-2,M,A,50,1,")
            .replace("fit-2,M,B,,,", "fit-2,M,B,60,+1 -0.5,")
            .replace("set,S,B,,,", "set,S,B,59,+1 -0.5,"),
        Files.readString(dir.resolve("fits.csv")));
    assertEquals(before, verdicts(pack));
    assertTrue(
        Run.of("revise", pack, "fit-2").out().startsWith("No revised value of fit-2 differs"));
  }

  /** The list in a CSV file with typed values: one cell of it changes. */
  @Test
  void changesOneCellOfATypedList() throws IOException {
    SamplePack.write(dir, "set,L,A,,,,53.2,53,,,,,\nset,S,A,,,,48,,,,,,\n");
    String text = SamplePack.TEXT;
    int from = text.indexOf("  points:\n");
    int to = text.indexOf("samples:");
    Path pack =
        Files.writeString(
            dir.resolve("pack.yaml"),
            text.substring(0, from) + "  csv: points.csv\n" + text.substring(to));
    String points =
        "\uFEFFcode,name,tolerance,S,M,L\r\nA,\"Half, chest\",1,48,50,52\r\nB,Sleeve,,59,60,61\r\n";
    Files.writeString(dir.resolve("points.csv"), points);
    Run run = Run.of("revise", pack, "set", "--write");
    assertEquals(0, run.code(), run.err());
    assertEquals(points.replace("50,52", "50,53"), Files.readString(dir.resolve("points.csv")));
    assertEquals(
        SamplePack.HEADINGS + "set,L,A,52,1,,53.2,53,,,,,\nset,S,A,,,,48,,,,,,\n",
        Files.readString(dir.resolve("fits.csv")));
  }

  /** Alike values on one line of the description: each change lands on its own size. */
  @Test
  void changesSeveralTypedValuesOfOneLine() throws IOException {
    Path pack = SamplePack.write(dir, "set,S,A,,,,50,50.125,,,,,\nset,L,A,,,,50,50.5,,,,,\n");
    String graded = "value: 50, grade: 2}";
    String text = SamplePack.TEXT.replace(graded, "values: [50, 50, 50]}");
    Files.writeString(pack, text);
    Run run = Run.of("revise", pack, "set", "--write");
    assertEquals(0, run.code(), run.err());
    assertEquals(
        text.replace("values: [50, 50, 50]", "values: [50.125, 50, 50.5]"), Files.readString(pack));
  }

  @Test
  void refusesAnotherSizeOfAGradedPoint() throws IOException {
    Path pack = SamplePack.write(dir, "set,L,A,,,,53.2,53,,,,,\n");
    Run run = Run.of("revise", pack, "set", "--write");
    assertEquals(2, run.code());
    assertTrue(
        run.err().contains("fits.csv, line 2, column revised: size L of point A, which is graded"),
        run.err());
  }

  /** Columns that the file lacks come behind the others. */
  @Test
  void addsTheColumnsThatKeepWhatWasAsked() throws IOException {
    String csv = "sample,size,point,ours,revised\nfit-1,M,A,51.1,51\nfit-1,M,B,60,\n";
    Path pack = SamplePack.writeFile(dir, csv);
    List<String> before = verdicts(pack);
    Run run = Run.of("revise", pack, "fit-1", "--write");
    assertEquals(0, run.code(), run.err());
    assertEquals(
        "sample,size,point,ours,revised,asked,tolerance\nfit-1,M,A,51.1,51,50,1\nfit-1,M,B,60,,,\n",
        Files.readString(dir.resolve("fits.csv")));
    assertEquals(before, verdicts(pack));
  }

  @Test
  void namesTheSamplesThereAre() throws IOException {
    Run run = Run.of("revise", SamplePack.write(dir, ""), "fit-9");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("name one that it has: fit-1, fit-2, set, next"), run.err());
  }
}
