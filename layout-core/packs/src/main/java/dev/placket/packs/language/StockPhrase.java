package dev.placket.packs.language;

import dev.placket.layout.flat.Role;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the program itself prints on sheets. */
public enum StockPhrase {
  /** Caption of a front. */
  FRONT_VIEW("Front view"),
  /** Caption of a back. */
  BACK_VIEW("Back view"),
  /** Caption of a side. */
  SIDE_VIEW("Side view"),
  /** Caption of an inside. */
  INSIDE_VIEW("Inside view"),
  /** Caption of a drawing that shows both. */
  BOTH_VIEWS("Front and back view"),
  /** Caption of a detail without a name. */
  DETAIL("Detail"),
  /** Caption of a swatch without a name. */
  SWATCH("Swatch"),
  /** Caption of an artwork without a name. */
  ARTWORK("Artwork"),
  /** Caption of a photograph without a name. */
  PHOTO("Photo"),
  /** Caption of a step without a name. */
  STEP("Step"),
  /** The kind of the built-in sheet. */
  FLAT_SHEET("Flat sheet"),
  /** Header. */
  STYLE_NUMBER("Style no."),
  /** Header. */
  STYLE_NAME("Style name"),
  /** Header. */
  SHEET("Sheet"),
  /** Header. */
  REVISION("Revision"),
  /** Header. */
  DATE("Date"),
  /** Header. */
  STAGE("Stage"),
  /** Header. */
  SEASON("Season"),
  /** Header. */
  SIZE_RANGE("Size range"),
  /** Header. */
  SAMPLE_SIZE("Sample size"),
  /** Header. */
  UNIT("Unit"),
  /** Header. */
  FABRIC("Fabric"),
  /** Header. */
  FACTORY("Factory"),
  /** Header. */
  ISSUED_BY("Issued by"),
  /** Heading of a column: what a revision changed. */
  CHANGED("Changed"),
  /** Which of how many sheets it is. */
  SHEET_OF("{sheet} of {sheets}"),
  /** A caution. */
  NO_MEASURING("Do not take measurements from the drawings."),
  /** A caution. */
  NO_PATTERNS("Patterns are made and checked to the measured table, never cut from a drawing."),
  /** How to print. */
  PRINT("Print on {paper} at full size (100 %)."),
  /** Of a drawing of which no real length is stated. */
  NOT_TO_SCALE("not to scale"),
  /** A garment scale beside that of another flat. */
  SHARE_OF_SCALE("{scale}, {share} of {flat}'s scale"),
  /** A reduction against another flat. */
  REDUCED("drawn smaller, {share} of {flat}"),
  /** An enlargement against another flat. */
  ENLARGED("enlarged to {share} of {flat}"),
  /** Either of them where there is little room. */
  SHARE("{share} of {flat}"),
  /** A flat in such a line. */
  THE_FRONT("the front"),
  /** A flat in such a line. */
  THE_BACK("the back"),
  /** A flat in such a line. */
  THE_SIDE("the side"),
  /** A flat in such a line. */
  THE_INSIDE("the inside"),
  /** Beside the bar by which a print is checked. */
  CHECK_BAR("100 mm: check this length on the print"),
  /** What stands in for a drawing where it cannot be seen. */
  LINE_DRAWING("line drawing"),
  /** What stands in for a picture of pixels where it cannot be seen. */
  PICTURE("picture"),
  /** Heading over the codes of points of measure. */
  POINT("Point"),
  /** Heading over what is measured. */
  MEASURED("Measured"),
  /** Heading over tolerances. */
  TOLERANCE("Tolerance"),
  /** Of a measure across one layer, from edge to edge. */
  HALF("half"),
  /** Of a measure all round. */
  FULL("full"),
  /** Of a measure of what lies smooth. */
  FLAT("flat"),
  /** Of a measure of what is stretched. */
  STRETCHED("stretched"),
  /** Caption of an empty box. */
  ATTACH_SWATCH("Attach swatch here"),
  /** Caption of an empty box. */
  LAB_DIP_APPROVED("Lab dip approved"),
  /** Caption of an empty box. */
  TRIM_APPROVED("Trim approved"),
  /** Caption of an empty box. */
  APPROVED("Approved"),
  /** In a box for an approval. */
  BY("by"),
  /** In a box for an approval. */
  ON("date"),
  /** Heading over asked values. */
  ASKED("Asked"),
  /** Heading over the buyer's own values. */
  OURS("Ours"),
  /** Heading over measured less asked. */
  DIFFERENCE("Difference"),
  /** Heading over how points stand against the round before. */
  TREND("Trend"),
  /** A trend. */
  IN_AGAIN("in again"),
  /** A trend. */
  NOW_OUT("now out"),
  /** A trend. */
  STILL_OUT("still out"),
  /** Heading over values that are asked from now on. */
  REVISED("Revised"),
  /** Heading over what is decided on a point. */
  DECISION("Decision"),
  /** Heading over comments. */
  COMMENT("Comment"),
  /** Heading over the numbers of comments. */
  NUMBER("No."),
  /** Heading over the round in which a comment was made. */
  SINCE("Since"),
  /** Heading over who acts on a comment. */
  ACTION("Action by"),
  /** Heading over open and closed. */
  STATE("State"),
  /** Of a comment. */
  OPEN("open"),
  /** Of a comment. */
  CLOSED("closed"),
  /** Of a comment of an earlier round. */
  STILL_OPEN("still open"),
  /** Heading: the number of a sample. */
  ROUND("Round"),
  /** Heading. */
  COLOUR("Colour"),
  /** Heading: a date. */
  RECEIVED("Received"),
  /** Heading: a date. */
  MEASURED_ON("Measured on"),
  /** Heading. */
  WASH("Wash"),
  /** When a sample was measured. */
  BEFORE_WASH("before wash"),
  /** When a sample was measured. */
  AFTER_WASH("after wash"),
  /** Heading over what is not as it was asked for. */
  SUBSTITUTIONS("Substitutions"),
  /** Heading over the decision on a sample. */
  VERDICT("Verdict"),
  /** A decision. */
  APPROVED_WITH_COMMENTS("Approved with comments"),
  /** A decision. */
  RESUBMIT("Resubmit"),
  /** Heading: a name. */
  CHECKED_BY("Checked by"),
  /** Heading. */
  SIZE("Size"),
  /** Heading over a number of points. */
  POINTS_MEASURED("Points measured"),
  /** Heading over a number of points. */
  WITHIN_TOLERANCE("Within tolerance"),
  /** Heading over a number of points. */
  OUT_OF_TOLERANCE("Out of tolerance"),
  /** Heading over a number of points. */
  NO_TOLERANCE("No tolerance"),
  /** Heading over a number of points. */
  NOT_MEASURED("Not measured"),
  /** Heading over the parts of a garment. */
  PART("Part"),
  /** Heading over pictures of materials. */
  SHOWN("Shown"),
  /** Heading over materials. */
  MATERIAL("Material"),
  /** Heading over what materials are made of. */
  COMPOSITION("Composition"),
  /** Heading over widths of cloth. */
  WIDTH("Width"),
  /** Heading over suppliers and their numbers. */
  SUPPLIER("Supplier"),
  /** Heading over where materials go. */
  PLACEMENT("Placement"),
  /** Heading over how much a garment takes. */
  CONSUMPTION("Consumption"),
  /** Of a consumption. */
  WASTE_INCLUDED("waste included"),
  /** Of a consumption. */
  WASTE_EXCLUDED("without waste");

  private final String english;

  StockPhrase(String english) {
    this.english = english;
  }

  /** The phrase in English, by which a glossary has it. */
  public String english() {
    return english;
  }

  /** The caption of a flat of a role. */
  public static StockPhrase caption(Role role) {
    return switch (role) {
      case FRONT -> FRONT_VIEW;
      case BACK -> BACK_VIEW;
      case SIDE -> SIDE_VIEW;
      case INSIDE -> INSIDE_VIEW;
      case DETAIL -> DETAIL;
      case SWATCH -> SWATCH;
      case ARTWORK -> ARTWORK;
      case PHOTO -> PHOTO;
      case STEP -> STEP;
    };
  }

  /** The word of how a point is measured, as it is written; null for another word. */
  public static @Nullable StockPhrase measured(String word) {
    return List.of(HALF, FULL, FLAT, STRETCHED).stream()
        .filter(p -> p.english.equals(word))
        .findFirst()
        .orElse(null);
  }

  /** The view of a role, as another flat is compared with it. */
  public static StockPhrase view(Role role) {
    return switch (role) {
      case FRONT -> THE_FRONT;
      case BACK -> THE_BACK;
      case SIDE -> THE_SIDE;
      case INSIDE -> THE_INSIDE;
      default -> throw new IllegalArgumentException(role + " is no view");
    };
  }
}
