package dev.placket.pictures.svg.layer;

import java.text.AttributedCharacterIterator;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;
import org.apache.batik.gvt.text.TextPaintInfo;

/** What the letters of a text are painted with. */
final class TextPaints {
  private TextPaints() {}

  /** Each once, though many letters share it. */
  static Set<TextPaintInfo> of(TextNode text) {
    Set<TextPaintInfo> found = Collections.newSetFromMap(new IdentityHashMap<>());
    AttributedCharacterIterator run = text.getAttributedCharacterIterator();
    if (run == null) {
      return found;
    }
    for (char c = run.first(); c != AttributedCharacterIterator.DONE; c = run.next()) {
      Object info = run.getAttribute(GVTAttributedCharacterIterator.TextAttribute.PAINT_INFO);
      if (info instanceof TextPaintInfo paint) {
        found.add(paint);
      }
    }
    return found;
  }
}
