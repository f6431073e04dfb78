package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.parts.Parts;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** Names packages that are no workbook of ISO/IEC 29500 as what they are. */
final class PackageKind {
  private static final String SAVE_AS =
      "; open it in a spreadsheet program and save it as an ISO/IEC 29500 workbook (.xlsx).";

  /** Ends of media types of OpenDocument (ISO/IEC 26300), templates of each among them. */
  private static final Map<String, String> OPEN_DOCUMENT =
      Map.of(
          "opendocument.spreadsheet", "is an OpenDocument spreadsheet (.ods)" + SAVE_AS,
          "opendocument.text",
              "is an OpenDocument text (.odt), not a workbook; name a workbook" + " (.xlsx).");

  /** Roots of other documents of ISO/IEC 29500. */
  private static final Map<String, String> ROOTS =
      Map.of(
          "document", "is a text document (.docx), not a workbook; name a workbook (.xlsx).",
          "presentation", "is a set of slides (.pptx), not a workbook; name a workbook (.xlsx).");

  private PackageKind() {}

  /** A workbook whose parts are binary records. */
  static Refusal binary(Parts parts) {
    return Refusal.input(parts.file() + ": is a binary workbook (.xlsb)" + SAVE_AS);
  }

  /** A package without the main part of a workbook. */
  static Refusal refusal(Parts parts) throws Refusal {
    if (parts.has("mimetype")) {
      String type = new String(parts.bytes("mimetype"), StandardCharsets.ISO_8859_1);
      for (Map.Entry<String, String> kind : OPEN_DOCUMENT.entrySet()) {
        if (type.contains(kind.getKey())) {
          return Refusal.input(parts.file() + ": " + kind.getValue());
        }
      }
    }
    for (String name : parts.names()) {
      if (name.toLowerCase(Locale.ROOT).matches(".*\\.(xlsx|xlsm)")) {
        return Refusal.input(
            parts.file() + ": is a zip archive that holds " + name + "; unpack it and name that.");
      }
    }
    return refusal(parts, "");
  }

  /**
   * A package with a main part that is none of a workbook.
   *
   * @param root the name of its root element; empty where there is none
   */
  static Refusal refusal(Parts parts, String root) {
    String what =
        ROOTS.getOrDefault(
            root,
            "is a package, but no workbook of ISO/IEC 29500; name one, as in --onto pack.xlsx.");
    return Refusal.input(parts.file() + ": " + what);
  }
}
