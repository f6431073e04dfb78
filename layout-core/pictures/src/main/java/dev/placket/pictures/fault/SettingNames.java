package dev.placket.pictures.fault;

/** The words of a program for the settings that its users may change. */
public interface SettingNames {
  /** The names of the API. */
  SettingNames LIBRARY = new ApiNames();

  /** The setting itself, as in {@code maximumSheets}. */
  String name(Setting setting);

  /**
   * How a remedy uses the setting, at the end of a phrase such as "raise the limit".
   *
   * @param value the value to give it; empty where the reader chooses one
   */
  String use(Setting setting, String value);
}
