package dev.placket.pictures.fault;

/** The names of the API, for programs that supply none of their own. */
final class ApiNames implements SettingNames {
  @Override
  public String name(Setting setting) {
    return setting.label();
  }

  @Override
  public String use(Setting setting, String value) {
    return "(" + setting.label() + (value.isEmpty() ? "" : " " + value) + ")";
  }
}
