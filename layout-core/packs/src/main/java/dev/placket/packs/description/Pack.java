package dev.placket.packs.description;

import dev.placket.layout.flat.Role;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.packs.history.PackHistory;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A whole pack as its description says it: what all sheets share, and the sheets in their order.
 *
 * <p>The order of its maps is the order on paper: a program hands over maps that keep theirs.
 *
 * @param languages short names of the languages that text is set in, the first leading
 * @param printed those of the languages that sheets are printed in, the first leading
 * @param glossary a table of texts in several languages, from the folder of the description; null
 *     for none
 * @param fields values that text may name in braces, as in {@code {style-number}}
 * @param paper the paper of all sheets that state none, the way up it is used
 * @param margins the margins of all sheets that state none
 * @param fonts TrueType files beside the description, asked in their order for characters that the
 *     built-in typeface lacks
 * @param header cells along the top of every sheet; null for none
 * @param foot cells along the bottom of every sheet; null for none
 * @param sheets the sheets by identifier; none where there is a workbook
 * @param workbook what goes onto a workbook that is ruled already; null for sheets of our own
 * @param oneScale scale groups that have one scale on all sheets, not on each its own
 * @param rounding round scales; null for the largest
 * @param lineWeights the widths at which outlines print, by the names of roles, or {@link
 *     #ALL_ROLES}; none for lines as they are drawn
 * @param measurements the points of measure; null for none
 * @param samples what was sewn and measured; null for none
 * @param colourways the colours of its parts; null for none
 * @param materials its materials by the numbers that the pack has for them
 * @param history the log of its revisions, and the revision of each sheet
 * @param retired identifiers of earlier revisions that must not come back
 */
public record Pack(
    List<String> languages,
    List<String> printed,
    @Nullable String glossary,
    Map<String, Words> fields,
    PaperSize paper,
    Margins margins,
    List<String> fonts,
    @Nullable PackBand header,
    @Nullable PackBand foot,
    Map<String, PackSheet> sheets,
    @Nullable PackWorkbook workbook,
    List<String> oneScale,
    @Nullable PackRounding rounding,
    Map<String, Length> lineWeights,
    @Nullable PackMeasurements measurements,
    @Nullable PackSamples samples,
    @Nullable PackColourways colourways,
    Map<String, PackMaterial> materials,
    PackHistory history,
    List<String> retired) {
  /** What the first line of a description states. */
  public static final String FORMAT = "placket-pack/1";

  /** The key of a width for the outlines of all roles. */
  public static final String ALL_ROLES = "";

  /** The paper where none is stated. */
  public static final PaperSize USUAL_PAPER = PaperSize.A4.landscape();

  /** The margins where none are stated. */
  public static final Margins USUAL_MARGINS = Margins.all(Length.mm(10));

  /** Copies collections. */
  public Pack {
    languages = List.copyOf(languages);
    printed = List.copyOf(printed);
    fields = ordered(fields);
    fonts = List.copyOf(fonts);
    sheets = ordered(sheets);
    oneScale = List.copyOf(oneScale);
    lineWeights = ordered(lineWeights);
    materials = ordered(materials);
    retired = List.copyOf(retired);
  }

  /** The width at which outlines of a role print; null as they are drawn. */
  public @Nullable Length lineWeight(Role role) {
    Length its = lineWeights.get(Spelled.word(role));
    return its == null ? lineWeights.get(ALL_ROLES) : its;
  }

  /** A pack in English on A4 landscape, without header and foot. */
  public static Pack of(Map<String, Words> fields, Map<String, PackSheet> sheets) {
    return new Pack(
        List.of("en"),
        List.of("en"),
        null,
        fields,
        USUAL_PAPER,
        USUAL_MARGINS,
        List.of(),
        null,
        null,
        sheets,
        null,
        List.of(),
        null,
        Map.of(),
        null,
        null,
        null,
        Map.of(),
        PackHistory.NONE,
        List.of());
  }

  /**
   * This pack with every sheet on another paper.
   *
   * @param asIs whether all are to be the way up that the paper is, not each the way up that it was
   */
  public Pack on(PaperSize other, boolean asIs) {
    Map<String, PackSheet> moved = new LinkedHashMap<>();
    sheets.forEach(
        (id, s) ->
            moved.put(
                id, s.on(s.paper() == null ? null : asIs ? other : turned(other, s.paper()))));
    PaperSize all = asIs ? other : turned(other, paper);
    return new Pack(
        languages,
        printed,
        glossary,
        fields,
        all,
        margins,
        fonts,
        header,
        foot,
        moved,
        workbook,
        oneScale,
        rounding,
        lineWeights,
        measurements,
        samples,
        colourways,
        materials,
        history,
        retired);
  }

  /** This pack with other sheets. */
  public Pack with(Map<String, PackSheet> others) {
    return new Pack(
        languages,
        printed,
        glossary,
        fields,
        paper,
        margins,
        fonts,
        header,
        foot,
        others,
        workbook,
        oneScale,
        rounding,
        lineWeights,
        measurements,
        samples,
        colourways,
        materials,
        history,
        retired);
  }

  /** This pack with another workbook. */
  public Pack with(PackWorkbook other) {
    return new Pack(
        languages,
        printed,
        glossary,
        fields,
        paper,
        margins,
        fonts,
        header,
        foot,
        sheets,
        other,
        oneScale,
        rounding,
        lineWeights,
        measurements,
        samples,
        colourways,
        materials,
        history,
        retired);
  }

  /** This pack with another history. */
  public Pack with(PackHistory other) {
    return new Pack(
        languages,
        printed,
        glossary,
        fields,
        paper,
        margins,
        fonts,
        header,
        foot,
        sheets,
        workbook,
        oneScale,
        rounding,
        lineWeights,
        measurements,
        samples,
        colourways,
        materials,
        other,
        retired);
  }

  private static PaperSize turned(PaperSize other, PaperSize like) {
    return like.width().compareTo(like.height()) > 0 ? other.landscape() : other.portrait();
  }

  static <V> Map<String, V> ordered(Map<String, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
