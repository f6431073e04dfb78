package dev.placket.packs.run;

import dev.placket.packs.compose.CalloutCodes;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.DescriptionText;
import dev.placket.packs.description.PackCallout;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A description whose callouts have the codes that they ask for.
 *
 * @param codes what was assigned, and what was retired
 * @param text the whole file
 */
public record Numbering(CalloutCodes codes, String text) {
  private static final String MARK = "\uFEFF";

  /**
   * Assigns codes; the file is not written.
   *
   * @param file the description
   * @param reading how pictures are read
   * @throws Refusal if the description or a picture of it is at fault
   */
  public static Numbering of(Path file, Reading reading) throws Refusal {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(file);
    } catch (IOException e) {
      throw Refusal.input(
          Fault.unreadable(file, "cannot be opened")
              .remedy("check that it exists and is readable"));
    }
    Described described = PackReader.read(file, bytes);
    CalloutCodes codes = CalloutCodes.of(described, reading);
    String whole = new String(bytes, StandardCharsets.UTF_8);
    boolean marked = whole.startsWith(MARK);
    DescriptionText text = new DescriptionText(marked ? whole.substring(1) : whole);
    for (CalloutCodes.Given given : codes.given()) {
      TextPosition at = described.places().of(given.path());
      if (!text.replace(at, PackCallout.ASKING, given.code())) {
        described.faults().add(at, "a mark that cannot be replaced", "'mark: new' as it stands");
      }
    }
    retire(described, codes.retired(), text);
    described.faults().refuse();
    return new Numbering(codes, (marked ? MARK : "") + text.changed());
  }

  private static void retire(Described described, List<String> codes, DescriptionText text) {
    List<String> before = described.pack().retired();
    if (codes.isEmpty()) {
      return;
    }
    if (before.isEmpty()) {
      String first = described.pack().sheets().isEmpty() ? "" : "sheets";
      text.insert(described.places().of(first), "retired: [" + String.join(", ", codes) + "]");
      return;
    }
    int last = before.size() - 1;
    TextPosition at = described.places().of("retired/" + last);
    if (!text.append(at, before.get(last), codes)) {
      described
          .faults()
          .add(at, "retired codes in a form that cannot be added to", "a list, as [D2, 4]");
    }
  }
}
