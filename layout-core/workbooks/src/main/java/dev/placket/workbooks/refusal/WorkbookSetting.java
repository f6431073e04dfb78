package dev.placket.workbooks.refusal;

import dev.placket.pictures.fault.Setting;

/** A setting of a run that places flats onto a workbook. */
public enum WorkbookSetting implements Setting {
  /** The workbook. */
  WORKBOOK("workbook"),
  /** The worksheet for the flats. */
  WORKSHEET("worksheet"),
  /** A range where pictures may go. */
  WINDOW("window"),
  /** The tolerance for column and row sizes in pixels. */
  TOLERANCE("tolerance"),
  /** The maximum number of worksheets of a workbook. */
  MAXIMUM_WORKSHEETS("maximumWorksheets"),
  /** The maximum number of cells read from a workbook. */
  MAXIMUM_CELLS("maximumCells"),
  /** The maximum unpacked size of a workbook, in MiB. */
  MAXIMUM_MEBIBYTES("maximumMebibytes");

  private final String label;

  WorkbookSetting(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
