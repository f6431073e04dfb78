package dev.placket.packs.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import dev.placket.pictures.typeface.Shaping;
import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines break as UAX #14 has it where text is East Asian, and at blanks alone elsewhere. */
class LineBreaksTest {
  private static final char PART = '|';

  /** Letters, digits and signs that stand beside one another in Chinese, Japanese and Korean. */
  private static final String SIGNS =
      "aZ7布ア的ょッー々・。、，．！？：；（）「」『』〈〉【】“”‘’«»(),.!?:;-/%$¥￥％…—〜±°№一한글Ж&";

  private static String pieces(String text) {
    return String.join("" + PART, Breaks.words(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      value = {
        // By hand: no mark of closing begins a line, none of opening ends one (GB/T 15834; JIS X
        // 4051).
        "请用 A4 纸打印。 > 请|用| A4| 纸|打|印。",
        "口袋（左）的布 > 口|袋|（左）|的|布",
        "羊毛/棉 > 羊|毛/|棉",
        "“布”和‘线’ > “布”|和|‘线’",
        "他说“布” > 他|说|“布”",
        "ポケット > ポ|ケッ|ト",
        "キャー > キャー",
        "布々、糸 > 布々、|糸",
        "￥100起 > ￥100|起",
        "100％棉 > 100％|棉",
        "Gore-Tex布 > Gore-Tex|布",
        "XS–XXL号 > XS–XXL|号",
        // A Korean word is whole.
        "봉제 방법을 확인 > 봉제| 방법을| 확인",
        "wool/cotton twill > wool/cotton| twill",
      })
  void examplesByHand(String text, String wanted) {
    assertEquals(wanted, pieces(text));
  }

  @Test
  void marksOfLanguagesChangeNoBreak() {
    String marked = "Front / " + LanguageMarks.marked("正面图。", 1) + " A";
    List<String> words = Breaks.words(marked);
    assertEquals(marked, String.join("", words));
    assertEquals("Front| /| 正|面|图。| A", LanguageMarks.without(String.join("|", words)));
  }

  @Test
  void everyThreeSignsBreakAsAnotherProgramBreaksThem() {
    BreakIterator lines = BreakIterator.getLineInstance(new ULocale("en-u-lb-strict"));
    int[] signs = SIGNS.codePoints().toArray();
    List<String> wrong = new ArrayList<>();
    for (int a : signs) {
      for (int b : signs) {
        for (int c : signs) {
          compare(new String(new int[] {a, b, c}, 0, 3), lines, wrong);
        }
      }
    }
    Random random = new Random(14);
    for (int i = 0; i < 50_000; i++) {
      int[] text = random.ints(4 + random.nextInt(6), 0, signs.length).map(s -> signs[s]).toArray();
      compare(new String(text, 0, text.length), lines, wrong);
    }
    assertEquals(List.of(), wrong.subList(0, Math.min(60, wrong.size())), wrong.size() + " differ");
  }

  private static void compare(String text, BreakIterator lines, List<String> wrong) {
    String wanted = byIcu(text, lines);
    String found = pieces(text);
    if (!wanted.equals(found)) {
      wrong.add(found + " for " + wanted);
    }
  }

  /** ICU4J's breaks at East Asian characters; Hangul counts as letters, so that words are whole. */
  private static String byIcu(String text, BreakIterator lines) {
    String asked = text.replaceAll("[가-힣]", "a");
    lines.setText(asked);
    StringBuilder pieces = new StringBuilder();
    for (int i = 0; i < asked.length(); i++) {
      boolean inside = i > 0 && (isWide(asked.charAt(i - 1)) || isWide(asked.charAt(i)));
      pieces.append(inside && lines.isBoundary(i) ? "" + PART : "").append(text.charAt(i));
    }
    return pieces.toString();
  }

  private static boolean isWide(int c) {
    int width = UCharacter.getIntPropertyValue(c, UProperty.EAST_ASIAN_WIDTH);
    return Set.of(
            UCharacter.EastAsianWidth.FULLWIDTH,
            UCharacter.EastAsianWidth.HALFWIDTH,
            UCharacter.EastAsianWidth.WIDE)
        .contains(width);
  }

  @Test
  void theTableIsThatOfUnicode() {
    List<String> wrong = new ArrayList<>();
    for (int c = 0; c <= 0x3FFFF; c++) {
      if (Shaping.script(c) == null && Script.refusal(c) == null && Character.isDefined(c)) {
        String wanted = byUnicode(c);
        if (wanted != null && !wanted.equals(LineClass.of(c) + " " + LineClass.isEastAsian(c))) {
          wrong.add(Integer.toHexString(c) + " " + wanted + " not " + LineClass.of(c));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** Class and width; null for characters of which the table need not know. */
  private static @org.jspecify.annotations.Nullable String byUnicode(int c) {
    int property = UCharacter.getIntPropertyValue(c, UProperty.LINE_BREAK);
    String name =
        UCharacter.getPropertyValueName(UProperty.LINE_BREAK, property, UProperty.NameChoice.SHORT);
    boolean hangul = UnicodeScript.of(c) == UnicodeScript.HANGUL;
    int type = Character.getType(c);
    return switch (name) {
      case "CJ" -> "NS " + isWide(c);
      case "EB" -> "ID " + isWide(c);
      case "QU" ->
          (type == Character.INITIAL_QUOTE_PUNCTUATION
                  ? "QI"
                  : type == Character.FINAL_QUOTE_PUNCTUATION ? "QF" : "QU")
              + " "
              + isWide(c);
      case "H2", "H3" -> "AL false";
      case "ID" -> hangul && !isSign(c) ? "AL false" : "ID " + isWide(c);
      case "AL", "AI" -> isWide(c) ? null : "AL false";
      case "CM", "SP", "BK", "RI", "EM", "CB", "XX", "SG" -> null;
      default -> name + " " + isWide(c);
    };
  }

  /** Hangul in circles and parentheses is a sign, not part of a word. */
  private static boolean isSign(int c) {
    return c >= 0x3200 && c < 0x3300;
  }
}
