package dev.placket.packs.description;

/** What a cell that stays empty is for: hands fill it. */
public enum PackBox {
  /** A piece of cloth is attached. */
  SWATCH,
  /** A lab dip is approved. */
  LAB_DIP,
  /** A bought-in trim is approved. */
  TRIM,
  /** The sheet is approved. */
  SIGN_OFF
}
