package dev.placket.workbooks.write;

/**
 * The namespaces and types of one conformance class (ISO/IEC 29500: transitional or strict).
 *
 * @param relations of the attributes that name relations, and the start of relation types
 * @param drawing of anchors on a worksheet
 * @param art of what an anchor holds
 */
record Spellings(String relations, String drawing, String art) {
  static final String DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
  static final String RELATIONS_TYPE = "application/vnd.openxmlformats-package.relationships+xml";
  static final String RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";

  private static final Spellings TRANSITIONAL =
      new Spellings(
          "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
          "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
          "http://schemas.openxmlformats.org/drawingml/2006/main");
  private static final Spellings STRICT =
      new Spellings(
          "http://purl.oclc.org/ooxml/officeDocument/relationships",
          "http://purl.oclc.org/ooxml/drawingml/spreadsheetDrawing",
          "http://purl.oclc.org/ooxml/drawingml/main");

  static Spellings of(boolean strict) {
    return strict ? STRICT : TRANSITIONAL;
  }
}
