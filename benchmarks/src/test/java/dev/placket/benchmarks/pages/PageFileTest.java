package dev.placket.benchmarks.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.units.Rect;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageFileTest {
  private static final String GOOD =
      "[{'id':'a','width':200,'height':100,'margin':10,'gap':4,"
          + "'labelled':[[10,10,60,40]],'flats':[[30,20.5]]}]";

  private static List<ReferencePage> parse(String json) {
    return PageFile.parse("some.json", json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
  }

  private static String message(PageException e) {
    return String.valueOf(e.getMessage());
  }

  @Test
  void readsASheetWithoutExpectedValues() {
    ReferencePage page = parse(GOOD).get(0);
    assertEquals(List.of(new Rect(10, 10, 60, 40)), page.labelled());
    assertEquals(List.of(new ReferencePage.Size(30, 20.5)), page.flats());
    assertEquals(new Rect(10, 10, 190, 90), page.inside());
    assertNull(page.expected());
  }

  @Test
  void asksForTheLargestScaleAndNothingElse() {
    FitRequest request = parse(GOOD).get(0).request();
    assertEquals(new Rect(10, 10, 190, 90), request.sheet().inside());
    assertEquals(new Rect(10, 10, 60, 40), request.sheet().labelledCells().get(0).box());
    assertEquals(4, request.spacing().gap().pt());
    assertEquals(4, request.spacing().clearance().pt());
    assertEquals(0, request.order().share());
    assertEquals(20.5, request.flats().get(0).ink().height());
  }

  // Counts: the reference sheets' own description, 60 and 28.
  @ParameterizedTest
  @CsvSource({"pages, 60", "pages-hard, 28"})
  void readsTheBuiltInSheets(String name, int count) {
    List<ReferencePage> pages = PageFile.builtIn(name);
    assertEquals(count, pages.size());
    pages.forEach(p -> assertNotNull(p.expected(), p.id()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "[{'id':'a'                | some.json: no JSON at line 1",
        "{}                        | holds no sheets",
        "[]                        | holds no sheets",
        "[3]                       | sheet 1 is no JSON object",
        "[{'width':3}]             | sheet 1 has no 'id'",
        "[{'id':'a','width':'3'}]  | sheet 1 (a) has no number 'width' but \"3\"",
        "[{'id':'a','width':-3}]   | sheet 1 (a) has 'width' at -3.0",
        "[{'id':'a','width':9,'height':9,'margin':-1}] | 'margin' at -1.0",
        "[{'id':'a','width':9,'height':9,'margin':4.5,'gap':0}] | no room inside its margin",
        "[{'id':'a','width':9,'height':9,'margin':0,'gap':0}] | has no list 'labelled'",
        "[{'id':'a','width':9,'height':9,'margin':0,'gap':0,'labelled':[[1,2,3]]}] | labelled 1 is",
        "[{'id':'a','width':9,'height':9,'margin':0,'gap':0,'labelled':[[5,2,3,4]]}] | labelled 1 is",
        "[{'id':'a','width':9,'height':9,'margin':0,'gap':0,'labelled':[],'flats':[]}] | has no flats",
        "[{'id':'a','width':9,'height':9,'margin':0,'gap':0,'labelled':[],'flats':[[1,0]]}] | flats 1",
        "[{'id':'a','width':9,'windows':[]}] | sheet 1 (a) has 'windows'"
      })
  void saysWhatIsWrongAndWhere(String json, String part) {
    PageException e = assertThrows(PageException.class, () -> parse(json));
    assertTrue(message(e).startsWith("some.json: "), message(e));
    assertTrue(message(e).contains(part), message(e));
  }

  @Test
  void refusesTwoSheetsOfOneId() {
    String twice = GOOD.substring(0, GOOD.length() - 1) + "," + GOOD.substring(1);
    PageException e = assertThrows(PageException.class, () -> parse(twice));
    assertEquals("some.json: two sheets have the id 'a'; rename one of them", message(e));
  }

  @Test
  void namesAMissingFile() {
    PageException e = assertThrows(PageException.class, () -> PageFile.read("nowhere.json"));
    assertTrue(message(e).startsWith("nowhere.json: no such file"), message(e));
  }
}
