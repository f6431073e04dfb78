package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in files of samples: each is answered with the line and the column. */
class SampleFaultsTest {
  @TempDir Path dir;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "fit-9,M,A,,,,50,,,,,,|line 2, column sample: no sample under checks named 'fit-9'",
        "fit-1,XL,A,,,,50,,,,,,|line 2, column size: no size of the list 'XL'",
        "fit-1,M,Z,,,,50,,,,,,|line 2, column point: no point of measure 'Z'",
        "fit-1,M,A,,,,fifty,,,,,,|line 2, column ours: 'fifty', which is no length",
        "fit-1,M,A,,,\"50,5\",,,,,,,|line 2, column factory: '50,5', which is no length",
        "fit-1,M,A,,,,20 in,,,,,,|line 2, column ours: '20 in' in a list in cm",
        "fit-1,M,A,,,,-50,,,,,,|line 2, column ours: '-50'",
        "fit-1,M,A,,+1,,50,,,,,,|line 2, column tolerance: the tolerance '+1'",
        "fit-1,M,,,,,,,,Loose hem,,,|line 2, column number: a comment without a number",
        "fit-1,M,A,,,,50,,,Loose,,factory,|line 2, column number: a comment without a number",
        "fit-1,M,,,,,,,,Loose hem,one,,|line 2, column number: 'one'",
        "fit-1,M,,,,,,,,,7,,|line 2, column comment: no text for the new number 7",
        "fit-1,M,,,,,,,,Loose hem,7,,done|line 2, column state: the state 'done'",
        "fit-1,M,,,,,50,,,,,,|line 2, column point: neither a point, a comment nor a photograph",
        "`fit-1,M,A,,,,50,,,,,,\nfit-1,M,A,,,,51,,,,,,`|line 3, column point: values of A again",
        "`set,S,A,,,,48,,,,,,\nset,L,A,,,,52,,,,,,\nset,,A,,,,50,,,,,,`|line 4, column size: no size",
        "`fit-1,M,,,,,,,,Loose,7,,\nfit-1,M,,,,,,,,Tight,7,,`|line 3, column number: the number 7 again",
        // The list has 50 already: what was asked in the round is not known.
        "fit-1,M,A,,,,51.5,50,,,,,|line 2, column asked: no value, though the list has the value",
        "`fit-1,M,A,,,,51.5,,,,,,\nfit-2,M,A,49,,,51,50,,,,,`|line 2, column asked: no value",
      })
  void isAnsweredByLineAndColumn(String rows, String expected) throws IOException {
    Run run = SamplePack.fit(SamplePack.write(dir, rows + "\n"));
    String flat = run.err().replaceAll("\\s+", " ");
    assertEquals(2, run.code(), flat);
    assertTrue(flat.contains("fits.csv, " + expected), flat);
    assertFalse(Files.exists(dir.resolve("out/pack.pdf")), "nothing is written");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "size,point,ours|line 1: no heading 'sample'",
        "sample,ours,ours|line 1: one heading twice",
        "sample,point,hours|line 1: the heading 'hours'",
        "`sample,size,point,unit,ours\nfit-1,M,A,in,20`|line 2, column unit: 'in'",
        "`sample,photograph\nfit-1,front.jpg`|line 2, column photograph: no file 'front.jpg'",
        "`sample,photograph\nfit-1,../x.jpg`|line 2, column photograph: no file '../x.jpg'",
        "`sample,comment,number,at\nfit-1,Loose,1,40% 20%`|line 2, column at: a spot without photograph",
      })
  void headingsUnitsAndPhotographs(String csv, String expected) throws IOException {
    Run run = SamplePack.fit(SamplePack.writeFile(dir, csv + "\n"));
    String flat = run.err().replaceAll("\\s+", " ");
    assertEquals(2, run.code(), flat);
    assertTrue(flat.contains("fits.csv, " + expected), flat);
  }
}
