package dev.placket.packs.folder;

import dev.placket.layout.units.Length;
import dev.placket.packs.folder.PackNotes.Field;
import dev.placket.packs.text.Lettering;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value in the header of the built-in sheet.
 *
 * @param caption what stands above it, and what messages call it
 * @param field where it comes from; null for the label, the number of the sheet
 * @param steps the capital heights to try, the preferred first
 * @param usual the width that it likes, in millimetres
 */
record HeaderSpot(String caption, @Nullable Field field, List<Length> steps, double usual) {
  static final List<Length> STRONG = List.of(Lettering.HEADING, Lettering.VALUE, Lettering.CAPTION);
  static final List<Length> USUAL = List.of(Lettering.VALUE, Lettering.CAPTION);
  static final List<Length> TITLE =
      List.of(Lettering.TITLE, Lettering.HEADING, Lettering.VALUE, Lettering.CAPTION);

  /** What kind of sheet this is; its value is the label's name. */
  static final HeaderSpot KIND = new HeaderSpot("Flat sheet", Field.LABEL, STRONG, 34);

  /** Which of how many sheets it is. */
  static final HeaderSpot SHEET = new HeaderSpot("Sheet", null, USUAL, 20);

  /** All of them, the most wanted first. */
  static final List<HeaderSpot> ALL =
      List.of(
          KIND,
          new HeaderSpot("Style no.", Field.STYLE_NUMBER, STRONG, 30),
          new HeaderSpot("Style name", Field.STYLE_NAME, STRONG, 52),
          SHEET,
          new HeaderSpot("Revision", Field.REVISION, USUAL, 19),
          new HeaderSpot("Date", Field.DATE, USUAL, 24),
          new HeaderSpot("Stage", Field.STAGE, USUAL, 26),
          new HeaderSpot("Season", Field.SEASON, USUAL, 20),
          new HeaderSpot("Size range", Field.SIZE_RANGE, USUAL, 30),
          new HeaderSpot("Sample size", Field.SAMPLE_SIZE, USUAL, 21),
          new HeaderSpot("Unit", Field.UNIT, USUAL, 15),
          new HeaderSpot("Fabric", Field.FABRIC, USUAL, 52),
          new HeaderSpot("Factory", Field.FACTORY, USUAL, 44),
          new HeaderSpot("Issued by", Field.ISSUED_BY, USUAL, 26));

  /** Its value on a sheet. */
  String value(PackNotes notes, String ofSheets) {
    return field == null ? ofSheets : notes.value(field);
  }

  /** Whether it may step aside where there is no value. */
  boolean mayGo(PackNotes notes) {
    return field != null && this != KIND && notes.value(field).isBlank();
  }
}
