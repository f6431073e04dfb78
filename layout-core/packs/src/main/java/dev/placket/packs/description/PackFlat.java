package dev.placket.packs.description;

import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A flat on a sheet.
 *
 * @param file its picture, beside the description or in a folder below it; a page of a PDF by its
 *     number or its name, as in {@code style.pdf#3}
 * @param role what it is to the sheet
 * @param windows the windows it may use; empty for the sheet's only one, or the table's
 * @param scaling how its size hangs together with others
 * @param least the least printed length of its longest side, or null for its role's
 * @param greatest the greatest, or null for none of its own
 * @param trueSize whether it prints at its real size, with a bar to check the print by
 * @param caption what stands under it; null for its role, blank for nothing
 * @param note a line under the caption; blank for none
 * @param level the element of the drawing on whose height it lines up; null for the bottom
 * @param held what of its place must not move
 * @param colouring how areas of the drawing are coloured
 * @param hidden ids or classes of parts of the drawing that are not drawn
 * @param lineWeight the width at which its outline prints; null for that of the pack
 * @param outline the id or the class of the parts whose lines are its outline; null for the widest
 *     lines that make up at least 15 % of the drawn length
 * @param layers the layers of its file that are shown; empty for those that the file shows
 * @param spots what of it is pointed at
 */
public record PackFlat(
    String file,
    Role role,
    List<String> windows,
    Scaling scaling,
    @Nullable Length least,
    @Nullable Length greatest,
    boolean trueSize,
    @Nullable Words caption,
    Words note,
    @Nullable String level,
    Held held,
    PackColouring colouring,
    List<String> hidden,
    @Nullable Length lineWeight,
    @Nullable String outline,
    List<String> layers,
    PackSpots spots) {
  /** Copies collections. */
  public PackFlat {
    windows = List.copyOf(windows);
    hidden = List.copyOf(hidden);
    layers = List.copyOf(layers);
  }

  /**
   * How a flat's size hangs together with others.
   *
   * @param group the scale group, or null
   * @param ratio its scale over the group's, or null for its role's
   * @param share without a group: its longest side as a share of the front's, or null for its
   *     role's
   * @param unit the real length of one unit of the drawing, or null if unknown
   */
  public record Scaling(
      @Nullable String group,
      @Nullable Double ratio,
      @Nullable Double share,
      @Nullable Length unit) {
    /** Nothing stated. */
    public static final Scaling FREE = new Scaling(null, null, null, null);
  }

  /** A flat in a window, all else as its role has it. */
  public static PackFlat of(String file, Role role, String window) {
    return new PackFlat(
        file,
        role,
        List.of(window),
        Scaling.FREE,
        null,
        null,
        false,
        null,
        Words.NONE,
        null,
        Held.NOTHING,
        PackColouring.NONE,
        List.of(),
        null,
        null,
        List.of(),
        PackSpots.NONE);
  }

  /** This flat with its size tied to others. */
  public PackFlat with(Scaling s) {
    return new PackFlat(
        file,
        role,
        windows,
        s,
        least,
        greatest,
        trueSize,
        caption,
        note,
        level,
        held,
        colouring,
        hidden,
        lineWeight,
        outline,
        layers,
        spots);
  }

  /** This flat in other colours, under another caption, with other parts hidden. */
  public PackFlat with(PackColouring other, Words under, List<String> away) {
    return new PackFlat(
        file,
        role,
        windows,
        scaling,
        least,
        greatest,
        trueSize,
        under,
        note,
        level,
        held,
        other,
        away,
        lineWeight,
        outline,
        layers,
        spots);
  }
}
