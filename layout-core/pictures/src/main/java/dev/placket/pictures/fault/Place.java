package dev.placket.pictures.fault;

/** Where in a file or a call a fault lies. */
public sealed interface Place {
  /** The file or the call as a whole. */
  Place WHOLE = new Whole();

  /** The file or the call as a whole. */
  record Whole() implements Place {}

  /**
   * A line of a text file.
   *
   * @param line from 1
   * @param column from 1; 0 for the line as a whole
   */
  record Line(int line, int column) implements Place {}

  /**
   * A part of a file by its name, such as a header, an element or a sheet.
   *
   * @param name as messages call it
   */
  record Part(String name) implements Place {}

  /**
   * A line of a part, as of XML in a package.
   *
   * @param part as messages call it
   * @param line from 1
   */
  record PartLine(String part, int line) implements Place {}

  /**
   * Cells of a worksheet.
   *
   * @param worksheet its name
   * @param range the cells, as in {@code B5:H30}; empty for the worksheet as a whole
   */
  record Cells(String worksheet, String range) implements Place {}

  /**
   * A value that the caller gave a setting.
   *
   * @param setting the setting
   * @param value the value as it was given
   */
  record Value(Setting setting, String value) implements Place {}

  /** A line as a whole. */
  static Place line(int line) {
    return new Line(line, 0);
  }

  /** A part by its name. */
  static Place part(String name) {
    return new Part(name);
  }

  /** A worksheet as a whole. */
  static Place worksheet(String name) {
    return new Cells(name, "");
  }

  /** How messages call the place; empty for the whole. */
  default String words(SettingNames names) {
    if (this instanceof Line at) {
      return "line " + at.line + (at.column == 0 ? "" : ", column " + at.column);
    }
    if (this instanceof Part at) {
      return at.name;
    }
    if (this instanceof PartLine at) {
      return at.part + ", line " + at.line;
    }
    if (this instanceof Cells at) {
      return "worksheet '" + at.worksheet + "'" + (at.range.isEmpty() ? "" : ", " + at.range);
    }
    return this instanceof Value at ? names.name(at.setting) + " " + at.value : "";
  }
}
