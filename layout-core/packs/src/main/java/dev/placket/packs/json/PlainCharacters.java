package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import dev.placket.pictures.fault.Visible;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** JSON that can be shown on a terminal: signs that steer it are escaped, all of them. */
public final class PlainCharacters extends CharacterEscapes {
  private static final long serialVersionUID = 1;
  private static final int DELETE = 0x7F;

  private PlainCharacters() {}

  /** A factory whose generators write such JSON. */
  public static JsonFactory factory() {
    JsonFactory factory = new JsonFactory();
    factory.setCharacterEscapes(new PlainCharacters());
    return factory;
  }

  @Override
  public int[] getEscapeCodesForAscii() {
    int[] codes = CharacterEscapes.standardAsciiEscapesForJSON();
    codes[DELETE] = CharacterEscapes.ESCAPE_STANDARD;
    return codes;
  }

  @Override
  public @Nullable SerializableString getEscapeSequence(int sign) {
    boolean half = Character.isSurrogate((char) sign);
    return Visible.isUnseen(sign) && !half
        ? new SerializedString(String.format(Locale.ROOT, "\\u%04X", sign))
        : null;
  }
}
