package dev.placket.packs.flats;

import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The line on its scale under a flat: a figure only where a real length is stated, and a reduction
 * against the flat that leads its group.
 *
 * @param against the leading flat in each language, as in {@code the front}; null where there is
 *     nothing to compare
 * @param ratio the scale over that of the leading flat; 1 where there is nothing to compare
 * @param stated whether the real length of a unit is stated, hence a garment scale
 * @param brief whether the line keeps to what is needed, on small paper
 * @param round scales of which alone a figure is printed; null for any
 * @param phrases the languages of the pack; the line has their marks
 */
public record ScaleLine(
    @Nullable Function<String, String> against,
    double ratio,
    boolean stated,
    boolean brief,
    @Nullable ScaleSeries round,
    Phrases phrases) {
  /** A scale as wide as any that may come out. */
  private static final double WIDEST = 1 / 88.8;

  /** The line of a flat that is compared with none. */
  public static ScaleLine alone(boolean stated, Phrases phrases) {
    return new ScaleLine(null, 1, stated, false, null, phrases);
  }

  /** The same line, brief. */
  ScaleLine shortened() {
    return new ScaleLine(against, ratio, stated, true, round, phrases);
  }

  /** The same line, with a figure only where the scale is round. */
  public ScaleLine onlyRound(ScaleSeries scales) {
    return new ScaleLine(against, ratio, stated, brief, scales, phrases);
  }

  /** The same line without a figure; null where it says nothing else. */
  public @Nullable ScaleLine withoutFigure() {
    return against == null || ratio == 1
        ? null
        : new ScaleLine(against, ratio, false, brief, null, phrases);
  }

  /** A line as wide as any that may come out. */
  String widest() {
    Double widest = stated ? WIDEST : null;
    String longest = round == null ? "" : round.widest();
    if (stated && longest.length() > ScaleNote.scale(WIDEST).length()) {
      return longest;
    }
    return phrases.beside(language -> text(widest, language));
  }

  /**
   * The line, in all languages.
   *
   * @param garmentScale printed length over real length; null where no real length is stated
   */
  public String text(@Nullable Double garmentScale) {
    boolean plain = round != null && garmentScale != null && !round.has(garmentScale);
    return plain ? "" : phrases.beside(language -> text(garmentScale, language));
  }

  private Phrases.Said text(@Nullable Double garmentScale, String language) {
    Function<String, String> flat = against;
    if (garmentScale != null) {
      String scale =
          round != null && round.has(garmentScale)
              ? ScaleSeries.text(garmentScale)
              : ScaleNote.scale(garmentScale);
      return flat == null || ratio == 1 || brief
          ? new Phrases.Said("", scale)
          : filled(StockPhrase.SHARE_OF_SCALE, scale, flat, language);
    }
    if (flat == null || ratio == 1) {
      return phrases.in(StockPhrase.NOT_TO_SCALE, language);
    }
    StockPhrase change = ratio < 1 ? StockPhrase.REDUCED : StockPhrase.ENLARGED;
    return filled(brief ? StockPhrase.SHARE : change, "", flat, language);
  }

  private Phrases.Said filled(
      StockPhrase phrase, String scale, Function<String, String> flat, String language) {
    Phrases.Said said = phrases.in(phrase, language);
    String text =
        said.text()
            .replace("{scale}", scale)
            .replace("{share}", ScaleNote.trimmed(ratio))
            .replace("{flat}", flat.apply(language));
    return new Phrases.Said(said.language(), text);
  }
}
