package dev.placket.pictures.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A message is composed of the parts of a fault; the sentences are written by hand. */
class FaultTest {
  /** A program with buttons instead of options. */
  private static final SettingNames BUTTONS =
      new SettingNames() {
        @Override
        public String name(Setting setting) {
          return "the field " + setting.label();
        }

        @Override
        public String use(Setting setting, String value) {
          return "in the field " + setting.label() + (value.isEmpty() ? "" : ": " + value);
        }
      };

  @Example
  void fileAndWhatWasFound() {
    assertEquals("a.svg: is blank.", Fault.content("a.svg", "is blank").message());
  }

  @Example
  void fileAndPlace() {
    Fault fault = Fault.content("p.yaml", "is not in UTF-8");
    assertEquals("p.yaml, line 3: is not in UTF-8.", fault.at(Place.line(3)).message());
    assertEquals(
        "p.yaml, line 3, column 7: is not in UTF-8.", fault.at(new Place.Line(3, 7)).message());
    assertEquals("p.yaml, header: is not in UTF-8.", fault.in("header").message());
    assertEquals(
        "p.yaml, part x.xml, line 9: is not in UTF-8.",
        fault.at(new Place.PartLine("part x.xml", 9)).message());
    assertEquals(
        "p.yaml, worksheet 'Flats', B5:H30: is not in UTF-8.",
        fault.at(new Place.Cells("Flats", "B5:H30")).message());
  }

  @Example
  void ofTheCallItself() {
    Fault fault = Fault.setting(ReadLimit.PIXELS, 0, "is not above zero").remedy("give more");
    assertEquals("pixels 0: is not above zero; give more.", fault.message());
    assertEquals("the field pixels 0: is not above zero; give more.", fault.message(BUTTONS));
    assertEquals(Fault.Kind.SETTING, fault.kind());
    assertEquals(new Place.Value(ReadLimit.PIXELS, "0"), fault.place());
    assertEquals("no room on A4.", Fault.noRoom("no room on A4.").message());
  }

  @Example
  void whatWasExpectedAndTheNearestWord() {
    Fault fault = Fault.content("p.yaml", "the key 'fot'").at(new Place.Line(1, 2));
    assertEquals(
        "p.yaml, line 1, column 2: found the key 'fot'; expected one of foot, fonts; nearest is"
            + " 'foot'.",
        fault.expecting("one of foot, fonts", "foot").message());
  }

  @Example
  void aProgramCallsSettingsAsItsUsersKnowThem() {
    Fault fault =
        Fault.limit("a.png", "has 9 pixels")
            .remedy("export it smaller")
            .remedy("crop it")
            .remedy("raise the limit", ReadLimit.PIXELS);
    assertEquals(
        "a.png: has 9 pixels; export it smaller, crop it, or raise the limit (pixels).",
        fault.message());
    assertEquals(
        "a.png: has 9 pixels; export it smaller, crop it, or raise the limit in the field pixels.",
        fault.message(BUTTONS));
    assertEquals(List.of(ReadLimit.PIXELS), fault.remedy().settings());
    Remedy.Way given = new Remedy.Way("raise the limit", ReadLimit.PIXELS, "12");
    assertEquals(
        "a.png: has 9 pixels; raise the limit (pixels 12).",
        fault.with(Remedy.NONE.or(given)).message());
  }

  /** No line break of UAX 14 and no control code of ISO/IEC 6429, whatever is quoted. */
  @Property
  void isOneLineThatEndsAsASentence(
      @ForAll String file, @ForAll String part, @ForAll String found, @ForAll String todo) {
    String message =
        Fault.content(file, found).in(part).expecting(found, part).remedy(todo).message();
    assertTrue(message.matches("[^\\p{Cc}\\u2028\\u2029]*[.?!]"), message);
  }
}
