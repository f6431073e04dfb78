package dev.placket.layout.flat;

/**
 * What a flat is to its sheet.
 *
 * <p>The shares and ratios are common practice without a published source.
 */
public enum Role {
  /** The view that leads. */
  FRONT(true, 1),
  /** The garment from behind. */
  BACK(true, 0.85),
  /** The garment from the wearer's side. */
  SIDE(true, 0.85),
  /** The garment turned inside out or opened. */
  INSIDE(true, 0.85),
  /** One part, drawn larger. */
  DETAIL(false, 0.30),
  /** A piece of cloth. */
  SWATCH(false, 0.15),
  /** A print, label or embroidery. */
  ARTWORK(false, 0.40),
  /** A photograph. */
  PHOTO(false, 0.5),
  /** One step of making up or packing. */
  STEP(false, 0.3);

  private final boolean view;
  private final double share;

  Role(boolean view, double share) {
    this.view = view;
    this.share = share;
  }

  /** Whether it shows the whole garment. */
  public boolean isView() {
    return view;
  }

  /**
   * The longest side to aim at as a share of the front's; for a view in a scale group, its scale as
   * a share of the front's. Above 0, at most 1.
   */
  public double share() {
    return share;
  }
}
