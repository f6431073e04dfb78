package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.console.OptionNames;
import dev.placket.packs.refusal.PackSetting;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.fault.Remedy;
import dev.placket.pictures.fault.Setting;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a message tells the user of the command to give is an option of the command. */
class OptionNamesTest {
  private static final Pattern OPTION = Pattern.compile("--[a-z-]+");

  private static List<Setting> settings() {
    List<Setting> all = new ArrayList<>();
    all.addAll(Arrays.asList(PackSetting.values()));
    all.addAll(Arrays.asList(WorkbookSetting.values()));
    all.addAll(Arrays.asList(ReadLimit.values()));
    return all;
  }

  @Test
  void everySettingHasAnOption() {
    String help = Run.of("fit", "--help").out();
    for (Setting setting : settings()) {
      for (String words :
          List.of(OptionNames.ALL.name(setting), OptionNames.ALL.use(setting, ""))) {
        Matcher option = OPTION.matcher(words);
        assertTrue(option.find(), words);
        assertTrue(help.contains(option.group()), option.group() + " is in the help");
      }
    }
  }

  /** The names that --limit takes are those of the library. */
  @Test
  void everyLimitOfReadingCanBeRaised() {
    for (ReadLimit limit : ReadLimit.values()) {
      ReadLimits.DEFAULT.with(limit.label(), 1);
      assertEquals("with --limit " + limit.label() + "=N", OptionNames.ALL.use(limit, ""));
    }
  }

  @Test
  void remediesNameTheOption() {
    Fault fault = Fault.output("a.pdf", "already exists");
    assertEquals(
        "a.pdf: already exists; overwrite it with --overwrite.",
        fault.remedy("overwrite it", PackSetting.OVERWRITE).message(OptionNames.ALL));
    assertEquals(
        "a.pdf: already exists; accept it without --strict.",
        fault.remedy("accept it", PackSetting.STRICT).message(OptionNames.ALL));
    Remedy.Way paper = new Remedy.Way("place it", PackSetting.PAPER, "A3");
    assertEquals(
        "a.pdf: already exists; place it with --paper A3.",
        fault.with(Remedy.NONE.or(paper)).message(OptionNames.ALL));
  }

  @Test
  void aSettingOfAnotherProgramHasNone() {
    assertThrows(IllegalArgumentException.class, () -> OptionNames.ALL.name(() -> "colour"));
  }
}
