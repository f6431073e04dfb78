package dev.placket.packs.description;

import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The paper that a caller names: by its name, with the way up where that is stated, or by its two
 * sides.
 *
 * @param paper the paper, landscape where nothing else is stated
 * @param turned whether the way up is stated, so that it holds for a description, too
 */
public record PaperChoice(PaperSize paper, boolean turned) {
  private static final Pattern SIDES =
      Pattern.compile("([0-9.]+)\\s*(mm|cm|in|pt)?\\s*[x×]\\s*([0-9.]+)\\s*(mm|cm|in|pt)");

  /** ISO 32000-1, annex C.2: a page has at most 14,400 units a side. */
  private static final Length MOST = Length.pt(14_400);

  /**
   * Reads the name.
   *
   * @return null where it is null
   * @throws Refusal if it is neither a known name nor two sides
   */
  public static @Nullable PaperChoice of(@Nullable String text) throws Refusal {
    if (text == null) {
      return null;
    }
    String[] words = text.strip().split("\\s+");
    PaperSize named = PaperSize.named(words[0]).orElse(null);
    String way = words.length == 2 ? words[1].toLowerCase(Locale.ROOT) : "landscape";
    if (named != null && words.length <= 2 && List.of("landscape", "portrait").contains(way)) {
      PaperSize paper = way.equals("portrait") ? named.portrait() : named.landscape();
      return new PaperChoice(paper, words.length == 2);
    }
    Matcher sides = SIDES.matcher(text.strip());
    if (sides.matches()) {
      return sides(text, sides);
    }
    throw Refusal.input(
        Fault.setting(PackSetting.PAPER, text, "unknown")
            .remedy(
                "known are "
                    + String.join(", ", PaperSize.NAMED.stream().map(PaperSize::name).toList())
                    + ", each also with portrait after it, or width and height as in 210x148mm"));
  }

  private static PaperChoice sides(String text, Matcher sides) throws Refusal {
    String unit = sides.group(4);
    String first = sides.group(2) == null ? unit : sides.group(2);
    try {
      Length width = Length.parse(sides.group(1) + first);
      Length height = Length.parse(sides.group(3) + unit);
      PaperSize paper = new PaperSize(text.strip().replaceAll("\\s+", ""), width, height);
      check(text, paper);
      return new PaperChoice(paper, true);
    } catch (IllegalArgumentException e) {
      throw Refusal.input(
          Fault.setting(PackSetting.PAPER, text, "is not a paper size")
              .remedy("give width and height, as in 210x148mm"));
    }
  }

  private static void check(String text, PaperSize paper) throws Refusal {
    String over = over(paper);
    if (over != null) {
      throw Refusal.input(Fault.setting(PackSetting.PAPER, text, over).remedy("use smaller paper"));
    }
  }

  /** How paper is larger than a page of a PDF may be; null where it is not. */
  public static @Nullable String over(PaperSize paper) {
    Length longest = paper.landscape().width();
    return longest.compareTo(MOST) <= 0
        ? null
        : String.format(
            Locale.ROOT,
            "%.0f mm is longer than a page of a PDF may be (%.0f mm)",
            longest.mm(),
            MOST.mm());
  }
}
