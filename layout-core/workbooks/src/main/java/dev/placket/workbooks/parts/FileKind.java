package dev.placket.workbooks.parts;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Tells files that are no package of parts from one another by their first bytes. */
final class FileKind {
  /** What to do with a workbook of another kind. */
  static final String SAVE_AS =
      "open it in a spreadsheet program and save it as an ISO/IEC 29500 workbook (.xlsx)";

  /** What to do with a file of another kind. */
  static final String NAME = "name a workbook (.xlsx)";

  private static final int HEAD = 4096;

  /** How files begin that are kept instead of a workbook now and then. */
  private static final List<Start> STARTS =
      List.of(
          new Start("%PDF-", "a PDF", "name the workbook that it was printed from"),
          new Start("{\\rtf", "a rich text document", NAME),
          new Start("\u0089PNG", "a picture", NAME),
          new Start("\u00FF\u00D8\u00FF", "a picture", NAME),
          new Start("GIF8", "a picture", NAME),
          new Start("II*\u0000", "a picture", NAME),
          new Start("MM\u0000*", "a picture", NAME),
          new Start("RIFF", "a picture", NAME),
          // A binary workbook before it was kept in a compound file: its first record.
          new Start("\u0009\u0000\u0004\u0000", "an old binary workbook (.xls)", SAVE_AS),
          new Start("\u0009\u0002\u0006\u0000", "an old binary workbook (.xls)", SAVE_AS),
          new Start("\u0009\u0004\u0006\u0000", "an old binary workbook (.xls)", SAVE_AS),
          new Start("\u0009\u0008", "an old binary workbook (.xls)", SAVE_AS));

  private record Start(String bytes, String what, String todo) {}

  private FileKind() {}

  /**
   * Checks that a file may be a package of parts.
   *
   * @throws Refusal naming what it is, and what to do, if it is none
   */
  static void check(Path file) throws Refusal {
    if (Files.isDirectory(file)) {
      throw Refusal.input(
          Fault.unreadable(file, "is a folder")
              .remedy("give a workbook (.xlsx)", WorkbookSetting.WORKBOOK));
    }
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(HEAD);
    } catch (IOException e) {
      throw Refusal.input(
          Fault.unreadable(file, "cannot be read")
              .remedy("give the workbook", WorkbookSetting.WORKBOOK));
    }
    if (CompoundFile.is(head)) {
      throw Refusal.input(CompoundFile.fault(file));
    }
    if (head.length < 2 || head[0] != 'P' || head[1] != 'K') {
      throw Refusal.input(
          head.length == 0
              ? Fault.content(file, "is empty")
                  .remedy("give the workbook", WorkbookSetting.WORKBOOK)
              : other(file, new String(head, StandardCharsets.ISO_8859_1)));
    }
  }

  private static Fault other(Path file, String bytes) {
    for (Start start : STARTS) {
      if (bytes.startsWith(start.bytes)) {
        return not(file, start.what, start.todo);
      }
    }
    String words = bytes.replace("\u0000", "").toLowerCase(Locale.ROOT);
    if (words.contains("opendocument") && words.contains("<")) {
      return not(file, "an OpenDocument spreadsheet in one XML file (.fods)", SAVE_AS);
    }
    if (words.contains("office:spreadsheet")) {
      return not(file, "an old XML spreadsheet (.xml)", SAVE_AS);
    }
    if (words.contains("<svg")) {
      return not(file, "a drawing (.svg)", NAME);
    }
    if (words.contains("<html") || words.contains("<table")) {
      return not(file, "a web page (.html)", SAVE_AS);
    }
    if (words.stripLeading().startsWith("<?xml")) {
      return not(file, "an XML file", NAME);
    }
    return words.chars().allMatch(c -> c >= ' ' || Character.isWhitespace(c))
        ? not(file, "text, as in .csv, which has no printed pages", SAVE_AS)
        : not(
            file,
            "neither a package of parts nor any other workbook known here",
            "name an ISO/IEC 29500 workbook (.xlsx)");
  }

  private static Fault not(Path file, String what, String todo) {
    return Fault.content(file, "is not a workbook but " + what).remedy(todo);
  }
}
