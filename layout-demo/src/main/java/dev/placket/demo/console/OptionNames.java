package dev.placket.demo.console;

import dev.placket.packs.refusal.PackSetting;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.fault.Setting;
import dev.placket.pictures.fault.SettingNames;
import dev.placket.workbooks.refusal.WorkbookSetting;

/** The options by which a user of the command changes what the libraries call settings. */
public final class OptionNames implements SettingNames {
  /** The only one. */
  public static final OptionNames ALL = new OptionNames();

  private OptionNames() {}

  @Override
  public String name(Setting setting) {
    if (setting instanceof PackSetting pack) {
      return name(pack);
    }
    if (setting instanceof WorkbookSetting workbook) {
      return name(workbook);
    }
    if (setting instanceof ReadLimit) {
      return "--limit " + setting.label();
    }
    throw new IllegalArgumentException("no option for " + setting.label());
  }

  @Override
  public String use(Setting setting, String value) {
    if (setting == PackSetting.STRICT) {
      return "without " + name(setting);
    }
    String given = setting instanceof ReadLimit ? "=N" : value.isEmpty() ? "" : " " + value;
    return "with " + name(setting) + given;
  }

  private static String name(PackSetting setting) {
    return switch (setting) {
      case PAPER -> "--paper";
      case FOLDER -> "--out";
      case OVERWRITE -> "--overwrite";
      case STRICT -> "--strict";
      case ALLOW_SOFT -> "--allow-soft";
      case MAXIMUM_SIZE -> "--max-size";
      case MAXIMUM_SHEETS -> "--max-sheets";
      case MAXIMUM_ROWS -> "--max-rows";
      case MAXIMUM_PIXELS -> "--max-pixels";
    };
  }

  private static String name(WorkbookSetting setting) {
    return switch (setting) {
      case WORKBOOK -> "--onto";
      case WORKSHEET -> "--worksheet";
      case WINDOW -> "--window";
      case TOLERANCE -> "--tolerance";
      case MAXIMUM_WORKSHEETS -> "--max-worksheets";
      case MAXIMUM_CELLS -> "--max-cells";
      case MAXIMUM_MEBIBYTES -> "--max-mebibytes";
    };
  }
}
