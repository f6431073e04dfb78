package dev.placket.packs.page;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour space sRGB (IEC 61966-2-1) as an ICC profile of version 4 (ISO 15076-1), worked out
 * from the figures of the standard: the same bytes everywhere, and free to be passed on.
 */
final class SrgbProfile {
  /** What a PDF calls it. */
  static final String NAME = "sRGB IEC61966-2.1";

  private static final int HEADER = 128;
  private static final int ENTRY = 12;

  /** White at 5000 kelvin, to which profiles refer (ISO 15076-1, 7.2.16). */
  private static final double[] WHITE = {0.9642, 1, 0.8249};

  /** The primaries of sRGB under that white, by the linear Bradford transform. */
  private static final double[][] PRIMARIES = {
    {0.436066, 0.222488, 0.013916}, {0.385147, 0.716873, 0.097076}, {0.143066, 0.060608, 0.714096}
  };

  /** The Bradford transform from the white of sRGB, D65. */
  private static final double[] ADAPTED = {
    1.047882, 0.022919, -0.050217, 0.029587, 0.990479, -0.017059, -0.009232, 0.015076, 0.751678
  };

  /** The transfer curve: exponent, two factors of its upper part, the lower slope, the joint. */
  private static final double[] CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

  /** Type 3 of parametric curves (ISO 15076-1, 10.18). */
  private static final short CURVE_TYPE = 3;

  private SrgbProfile() {}

  static byte[] bytes() {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", text(NAME));
    tags.put("cprt", text("No copyright, use freely"));
    tags.put("wtpt", xyz(WHITE));
    tags.put("chad", numbers("sf32", ADAPTED));
    tags.put("rXYZ", xyz(PRIMARIES[0]));
    tags.put("gXYZ", xyz(PRIMARIES[1]));
    tags.put("bXYZ", xyz(PRIMARIES[2]));
    tags.put("rTRC", curve());
    int start = HEADER + 4 + (tags.size() + 2) * ENTRY;
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    ByteBuffer table = ByteBuffer.allocate(start - HEADER);
    table.putInt(tags.size() + 2);
    tags.forEach(
        (name, content) -> {
          entry(table, name, start + data.size(), content.length);
          if (name.equals("rTRC")) {
            // One curve for all three.
            entry(table, "gTRC", start + data.size(), content.length);
            entry(table, "bTRC", start + data.size(), content.length);
          }
          data.writeBytes(content);
          data.writeBytes(new byte[-content.length & 3]);
        });
    ByteBuffer all = ByteBuffer.allocate(start + data.size());
    header(all);
    all.position(HEADER);
    all.put(table.array()).put(data.toByteArray());
    return all.array();
  }

  private static void header(ByteBuffer all) {
    all.putInt(all.capacity()).putInt(0).putInt(0x04200000);
    all.put(ascii("mntrRGB XYZ "));
    for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
      all.putShort((short) part);
    }
    all.put(ascii("acsp"));
    // Platform, flags, device, attributes and intent: none is stated.
    all.position(68);
    for (double w : WHITE) {
      all.putInt(fixed(w));
    }
  }

  private static void entry(ByteBuffer table, String name, int at, int length) {
    table.put(ascii(name)).putInt(at).putInt(length);
  }

  private static byte[] text(String words) {
    byte[] utf16 = words.getBytes(StandardCharsets.UTF_16BE);
    ByteBuffer b = ByteBuffer.allocate(28 + utf16.length);
    b.put(ascii("mluc")).putInt(0).putInt(1).putInt(ENTRY);
    b.put(ascii("enUS")).putInt(utf16.length).putInt(28).put(utf16);
    return b.array();
  }

  private static byte[] xyz(double[] values) {
    return numbers("XYZ ", values);
  }

  private static byte[] numbers(String type, double[] values) {
    ByteBuffer b = ByteBuffer.allocate(8 + 4 * values.length);
    b.put(ascii(type)).putInt(0);
    for (double v : values) {
      b.putInt(fixed(v));
    }
    return b.array();
  }

  private static byte[] curve() {
    ByteBuffer b = ByteBuffer.allocate(12 + 4 * CURVE.length);
    b.put(ascii("para")).putInt(0).putShort(CURVE_TYPE).putShort((short) 0);
    for (double v : CURVE) {
      b.putInt(fixed(v));
    }
    return b.array();
  }

  /** A number with sixteen bits after the binary point. */
  private static int fixed(double value) {
    return (int) Math.round(value * 65536);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
