package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** Names packages that are no workbook of ISO/IEC 29500 as what they are. */
final class PackageKind {
  private static final String SAVE_AS =
      "open it in a spreadsheet program and save it as an ISO/IEC 29500 workbook (.xlsx)";

  private static final String NAME = "name a workbook (.xlsx)";

  private record Kind(String found, String todo) {
    Refusal refusal(Parts parts) {
      return Refusal.input(Fault.content(parts.file(), found).remedy(todo));
    }
  }

  /** Ends of media types of OpenDocument (ISO/IEC 26300), templates of each among them. */
  private static final Map<String, Kind> OPEN_DOCUMENT =
      Map.of(
          "opendocument.spreadsheet",
          new Kind("is an OpenDocument spreadsheet (.ods)", SAVE_AS),
          "opendocument.text",
          new Kind("is an OpenDocument text (.odt), not a workbook", NAME));

  /** Roots of other documents of ISO/IEC 29500. */
  private static final Map<String, Kind> ROOTS =
      Map.of(
          "document",
          new Kind("is a text document (.docx), not a workbook", NAME),
          "presentation",
          new Kind("is a set of slides (.pptx), not a workbook", NAME));

  private PackageKind() {}

  /** A workbook whose parts are binary records. */
  static Refusal binary(Parts parts) {
    return new Kind("is a binary workbook (.xlsb)", SAVE_AS).refusal(parts);
  }

  /** A package without the main part of a workbook. */
  static Refusal refusal(Parts parts) throws Refusal {
    if (parts.has("mimetype")) {
      String type = new String(parts.bytes("mimetype"), StandardCharsets.ISO_8859_1);
      for (Map.Entry<String, Kind> kind : OPEN_DOCUMENT.entrySet()) {
        if (type.contains(kind.getKey())) {
          return kind.getValue().refusal(parts);
        }
      }
    }
    for (String name : parts.names()) {
      if (name.toLowerCase(Locale.ROOT).matches(".*\\.(xlsx|xlsm)")) {
        return new Kind("is a zip archive that contains " + name, "unpack it and name that")
            .refusal(parts);
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
    Kind kind = ROOTS.get(root);
    return kind != null
        ? kind.refusal(parts)
        : Refusal.input(
            Fault.content(parts.file(), "is a package, but no workbook of ISO/IEC 29500")
                .remedy("name one (.xlsx)", WorkbookSetting.WORKBOOK));
  }
}
