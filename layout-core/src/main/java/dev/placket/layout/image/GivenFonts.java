package dev.placket.layout.image;

import java.awt.Font;
import java.io.InputStream;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.gvt.font.AWTFontFamily;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.jspecify.annotations.Nullable;

/** Finds a typeface for what a drawing asks for, and remembers what was not given. */
final class GivenFonts implements FontFamilyResolver {
  /** Words of CSS for a kind of typeface, which nobody can give. */
  private static final Set<String> KINDS =
      Set.of("serif", "sans-serif", "monospace", "cursive", "fantasy", "system-ui");

  /** What Batik asks for where a drawing asks for nothing. */
  private static final Set<String> UNASKED = Set.of("arial", "helvetica");

  private final Typefaces typefaces;
  private final Set<String> missing = new LinkedHashSet<>();
  private boolean shipped;

  GivenFonts(Typefaces typefaces) {
    this.typefaces = typefaces;
  }

  @Override
  public @Nullable GVTFontFamily resolve(String family) {
    String low = family.toLowerCase(Locale.ROOT);
    GVTFontFamily found =
        first(f -> Typefaces.family(f).toLowerCase(Locale.ROOT).equals(low), family);
    if (found == null && !KINDS.contains(low) && !UNASKED.contains(low)) {
      missing.add(family);
    }
    return found;
  }

  @Override
  public @Nullable GVTFontFamily resolve(String family, FontFace face) {
    return resolve(family);
  }

  @Override
  public GVTFontFamily loadFont(InputStream in, FontFace face) {
    throw new SecurityException("something outside the drawing: a font");
  }

  @Override
  public GVTFontFamily getDefault() {
    shipped = true;
    return family(Typefaces.shipped(), Typefaces.family(Typefaces.shipped()));
  }

  @Override
  public @Nullable GVTFontFamily getFamilyThatCanDisplay(char c) {
    GVTFontFamily found = first(f -> f.canDisplay(c), "");
    if (found == null && Typefaces.shipped().canDisplay(c)) {
      return getDefault();
    }
    return found;
  }

  private @Nullable GVTFontFamily first(Predicate<Font> fits, String name) {
    return typefaces.given().stream()
        .filter(fits)
        .findFirst()
        .map(f -> family(f, name.isEmpty() ? Typefaces.family(f) : name))
        .orElse(null);
  }

  private static GVTFontFamily family(Font font, String name) {
    return new AWTFontFamily(new GVTFontFace(name), font);
  }

  /** What to say where the typeface that comes along was used. */
  Stream<String> notes() {
    if (!shipped) {
      return Stream.empty();
    }
    String because =
        missing.isEmpty() ? "" : ", since " + String.join(", ", missing) + " is not given";
    return Stream.of("its lettering is set in Liberation Sans" + Said.line(because));
  }
}
