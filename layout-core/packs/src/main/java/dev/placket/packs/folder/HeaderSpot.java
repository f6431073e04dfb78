package dev.placket.packs.folder;

import dev.placket.layout.units.Length;
import dev.placket.packs.folder.PackNotes.Field;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.text.Lettering;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value in the header of the built-in sheet.
 *
 * @param title what stands above it
 * @param field where it comes from; null for the label, the number of the sheet
 * @param steps the capital heights to try, the preferred first
 * @param usual the width that it likes, in millimetres
 */
record HeaderSpot(StockPhrase title, @Nullable Field field, List<Length> steps, double usual) {
  static final List<Length> STRONG = List.of(Lettering.HEADING, Lettering.VALUE, Lettering.CAPTION);
  static final List<Length> USUAL = List.of(Lettering.VALUE, Lettering.CAPTION);
  static final List<Length> TITLE =
      List.of(Lettering.TITLE, Lettering.HEADING, Lettering.VALUE, Lettering.CAPTION);

  /** What kind of sheet this is; its value is the label's name. */
  static final HeaderSpot KIND = new HeaderSpot(StockPhrase.FLAT_SHEET, Field.LABEL, STRONG, 34);

  /** Which of how many sheets it is. */
  static final HeaderSpot SHEET = new HeaderSpot(StockPhrase.SHEET, null, USUAL, 20);

  /** All of them, the most wanted first. */
  static final List<HeaderSpot> ALL =
      List.of(
          KIND,
          new HeaderSpot(StockPhrase.STYLE_NUMBER, Field.STYLE_NUMBER, STRONG, 30),
          new HeaderSpot(StockPhrase.STYLE_NAME, Field.STYLE_NAME, STRONG, 52),
          SHEET,
          new HeaderSpot(StockPhrase.REVISION, Field.REVISION, USUAL, 19),
          new HeaderSpot(StockPhrase.DATE, Field.DATE, USUAL, 24),
          new HeaderSpot(StockPhrase.STAGE, Field.STAGE, USUAL, 26),
          new HeaderSpot(StockPhrase.SEASON, Field.SEASON, USUAL, 20),
          new HeaderSpot(StockPhrase.SIZE_RANGE, Field.SIZE_RANGE, USUAL, 30),
          new HeaderSpot(StockPhrase.SAMPLE_SIZE, Field.SAMPLE_SIZE, USUAL, 21),
          new HeaderSpot(StockPhrase.UNIT, Field.UNIT, USUAL, 15),
          new HeaderSpot(StockPhrase.FABRIC, Field.FABRIC, USUAL, 52),
          new HeaderSpot(StockPhrase.FACTORY, Field.FACTORY, USUAL, 44),
          new HeaderSpot(StockPhrase.ISSUED_BY, Field.ISSUED_BY, USUAL, 26));

  /** What messages call it. */
  String name() {
    return title.english();
  }

  /** What stands above it, in the languages of the pack. */
  String caption(PackNotes notes) {
    return notes.phrases().beside(title);
  }

  /** Its value on a sheet. */
  String value(PackNotes notes, String ofSheets) {
    return field == null ? ofSheets : notes.shown(field);
  }

  /** The number of a sheet of a pack, in its languages. */
  static String ofSheets(PackNotes notes, int number, int count) {
    Phrases phrases = notes.phrases();
    return phrases.beside(
        language -> {
          Phrases.Said said = phrases.in(StockPhrase.SHEET_OF, language);
          String text = said.text().replace("{sheet}", "" + number).replace("{sheets}", "" + count);
          return new Phrases.Said(said.language(), text);
        });
  }

  /** Wider than any number of a sheet. */
  static String widest(PackNotes notes) {
    return ofSheets(notes, 888, 888);
  }

  /** Whether it may step aside where there is no value. */
  boolean mayGo(PackNotes notes) {
    return field != null && this != KIND && notes.value(field).isBlank();
  }
}
