package dev.placket.workbooks.parts;

import dev.placket.packs.refusal.Refusal;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part as text, with the way its bytes stand for it: what is not changed comes back byte by byte.
 *
 * @param mark the byte order mark, empty for none
 * @param charset how the rest is encoded
 * @param text the rest
 */
@SuppressWarnings("ArrayRecordComponent")
public record XmlText(byte[] mark, Charset charset, String text) {
  private static final Pattern ENCODING =
      Pattern.compile("\\A<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)[\"']");

  /**
   * Decodes a part.
   *
   * @param what what messages call it
   * @throws Refusal if its bytes are not what they say
   */
  public static XmlText of(PartLabel what, byte[] bytes) throws Refusal {
    byte[] mark = mark(bytes);
    Charset charset = charset(bytes, mark.length);
    try {
      ByteBuffer rest = ByteBuffer.wrap(bytes, mark.length, bytes.length - mark.length);
      String text = charset.newDecoder().decode(rest).toString();
      XmlText whole = new XmlText(mark, charset, text);
      if (!java.util.Arrays.equals(bytes, whole.bytes())) {
        throw new CharacterCodingException();
      }
      return whole;
    } catch (CharacterCodingException e) {
      throw Refusal.input(
          what.fault("is not written in " + charset + " as it says")
              .remedy("save the workbook again"));
    }
  }

  /** The same part with other text. */
  public XmlText with(String other) {
    return new XmlText(mark, charset, other);
  }

  /** The bytes of the part. */
  public byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(mark);
    out.writeBytes(text.getBytes(charset));
    return out.toByteArray();
  }

  private static byte[] mark(byte[] b) {
    if (b.length >= 3 && b[0] == (byte) 0xEF && b[1] == (byte) 0xBB && b[2] == (byte) 0xBF) {
      return new byte[] {b[0], b[1], b[2]};
    }
    if (b.length >= 2 && (b[0] & 255) + (b[1] & 255) == 0xFE + 0xFF && b[0] != b[1]) {
      return new byte[] {b[0], b[1]};
    }
    return new byte[0];
  }

  private static Charset charset(byte[] bytes, int mark) {
    if (mark == 2) {
      return bytes[0] == (byte) 0xFE ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE;
    }
    // Without a mark, the first sign tells (Extensible Markup Language 1.0, appendix F).
    if (bytes.length >= 2 && bytes[0] == '<' && bytes[1] == 0) {
      return StandardCharsets.UTF_16LE;
    }
    if (bytes.length >= 2 && bytes[0] == 0 && bytes[1] == '<') {
      return StandardCharsets.UTF_16BE;
    }
    String head =
        new String(bytes, mark, Math.min(200, bytes.length - mark), StandardCharsets.ISO_8859_1);
    Matcher m = ENCODING.matcher(head);
    if (m.find() && !m.group(1).toUpperCase(Locale.ROOT).equals("UTF-8")) {
      try {
        return Charset.forName(m.group(1));
      } catch (IllegalArgumentException e) {
        return StandardCharsets.UTF_8;
      }
    }
    return StandardCharsets.UTF_8;
  }
}
