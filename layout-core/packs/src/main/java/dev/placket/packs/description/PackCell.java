package dev.placket.packs.description;

import dev.placket.layout.units.Length;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock.Align;
import dev.placket.packs.text.TextBlock.Stand;
import org.jspecify.annotations.Nullable;

/**
 * A labelled cell.
 *
 * @param caption the small line at its top; blank for none
 * @param text what it holds; fields are filled in
 * @param size the height of capitals to begin with
 * @param least the height of capitals down to which the text may shrink
 * @param align where lines begin
 * @param stand where the block of lines stands; null for the foot in header and foot, else the top
 * @param box what hands fill it with; null for a cell with text
 * @param picture a picture in place of text, as a logo, beside the description; null for none
 */
public record PackCell(
    Words caption,
    Words text,
    Length size,
    Length least,
    Align align,
    @Nullable Stand stand,
    @Nullable PackBox box,
    @Nullable String picture) {
  /** A cell of usual lettering. */
  public static PackCell of(String caption, String text) {
    return new PackCell(
        Words.of(caption),
        Words.of(text),
        Lettering.VALUE,
        Lettering.CAPTION,
        Align.LEFT,
        null,
        null,
        null);
  }
}
