package dev.placket.pictures.typeface;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * By how much two glyphs of a typeface stand nearer or further than their widths say: the feature
 * {@code kern} of its table GPOS (OpenType 1.9, chapter 2, GPOS, pair adjustment). FontBox reads
 * the older table alone.
 */
public final class PairKerning {
  private static final int PAIRS = 2;
  private static final int EXTENSION = 9;
  private static final int X_ADVANCE = 4;

  private final ByteBuffer table;
  private final List<Integer> pairs = new ArrayList<>();

  private PairKerning(ByteBuffer table) {
    this.table = table;
  }

  /** The pairs of a table GPOS; none of an empty or damaged one. */
  public static PairKerning of(byte[] gpos) {
    PairKerning kerning = new PairKerning(ByteBuffer.wrap(gpos));
    try {
      if (gpos.length > 0) {
        kerning.collect();
      }
    } catch (IndexOutOfBoundsException e) {
      kerning.pairs.clear();
    }
    return kerning;
  }

  private int word(int at) {
    return table.getShort(at) & 0xffff;
  }

  private void collect() {
    int features = word(6);
    int lookups = word(8);
    Set<Integer> wanted = new LinkedHashSet<>();
    for (int i = 0; i < word(features); i++) {
      int entry = features + 2 + 6 * i;
      if (table.getInt(entry) == ('k' << 24 | 'e' << 16 | 'r' << 8 | 'n')) {
        int feature = features + word(entry + 4);
        for (int n = 0; n < word(feature + 2); n++) {
          wanted.add(word(feature + 4 + 2 * n));
        }
      }
    }
    for (int index : wanted) {
      int lookup = lookups + word(lookups + 2 + 2 * index);
      for (int n = 0; n < word(lookup + 4); n++) {
        int part = lookup + word(lookup + 6 + 2 * n);
        boolean extended = word(lookup) == EXTENSION;
        if ((extended ? word(part + 2) : word(lookup)) == PAIRS) {
          pairs.add(extended ? part + table.getInt(part + 4) : part);
        }
      }
    }
  }

  /** Whether the typeface has no such pairs. */
  public boolean isEmpty() {
    return pairs.isEmpty();
  }

  /** What is added to the first glyph's width, in the units of the typeface; mostly below zero. */
  public int between(int first, int second) {
    try {
      for (int part : pairs) {
        int covered = covered(part + word(part + 2), first);
        if (covered >= 0) {
          if (word(part) != 1) {
            return classed(part, first, second);
          }
          Integer found = listed(part, covered, second);
          if (found != null) {
            return found;
          }
        }
      }
    } catch (IndexOutOfBoundsException e) {
      return 0;
    }
    return 0;
  }

  private @Nullable Integer listed(int part, int covered, int second) {
    int set = part + word(part + 10 + 2 * covered);
    int size = 2 + 2 * (Integer.bitCount(word(part + 4)) + Integer.bitCount(word(part + 6)));
    for (int i = 0; i < word(set); i++) {
      int at = set + 2 + size * i;
      if (word(at) == second) {
        return advance(word(part + 4), at + 2);
      }
    }
    return null;
  }

  private int classed(int part, int first, int second) {
    int format = word(part + 4);
    int size = 2 * (Integer.bitCount(format) + Integer.bitCount(word(part + 6)));
    int row = classOf(part + word(part + 8), first);
    int column = classOf(part + word(part + 10), second);
    return advance(format, part + 16 + size * (row * word(part + 14) + column));
  }

  /** The change of width in a record of values, of which a format says which it has. */
  private int advance(int format, int record) {
    return (format & X_ADVANCE) == 0
        ? 0
        : table.getShort(record + 2 * Integer.bitCount(format & (X_ADVANCE - 1)));
  }

  /** The place of a glyph in a table of coverage, or -1. */
  private int covered(int at, int glyph) {
    int count = word(at + 2);
    for (int i = 0; i < count; i++) {
      if (word(at) == 1) {
        if (word(at + 4 + 2 * i) == glyph) {
          return i;
        }
      } else {
        int range = at + 4 + 6 * i;
        if (glyph >= word(range) && glyph <= word(range + 2)) {
          return word(range + 4) + glyph - word(range);
        }
      }
    }
    return -1;
  }

  private int classOf(int at, int glyph) {
    if (word(at) == 1) {
      int offset = glyph - word(at + 2);
      return offset >= 0 && offset < word(at + 4) ? word(at + 6 + 2 * offset) : 0;
    }
    for (int i = 0; i < word(at + 2); i++) {
      int range = at + 4 + 6 * i;
      if (glyph >= word(range) && glyph <= word(range + 2)) {
        return word(range + 4);
      }
    }
    return 0;
  }
}
