package dev.placket.packs.refusal;

import dev.placket.pictures.fault.Setting;

/** A setting of a run that makes a pack. */
public enum PackSetting implements Setting {
  /** The paper of the sheets. */
  PAPER("paper"),
  /** The folder that files are written to. */
  FOLDER("folder"),
  /** Whether existing files are overwritten. */
  OVERWRITE("overwrite"),
  /** Whether pictures are refused that cannot be drawn exactly as their files say. */
  STRICT("strict"),
  /** Whether pictures may grow until they are soft. */
  ALLOW_SOFT("allowSoft"),
  /** The maximum size of a file or of all files, in million bytes. */
  MAXIMUM_SIZE("maximumSize"),
  /** The maximum number of sheets. */
  MAXIMUM_SHEETS("maximumSheets"),
  /** The maximum number of rows of a table. */
  MAXIMUM_ROWS("maximumRows"),
  /** The maximum number of pixels of all pictures that are made. */
  MAXIMUM_PIXELS("maximumPixels");

  private final String label;

  PackSetting(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
