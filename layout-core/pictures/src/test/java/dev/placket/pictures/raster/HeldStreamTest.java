package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.EOFException;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The bytes of a picture for a decoder: all of them, and no end of zeros behind them. */
class HeldStreamTest {
  private static final byte[] BYTES = {1, 2, 3, (byte) 200};

  @Test
  void handsOutEveryByte() throws IOException {
    HeldStream in = new HeldStream(BYTES);
    assertEquals(4, in.length());
    assertEquals(1, in.read());
    byte[] rest = new byte[9];
    assertEquals(3, in.read(rest, 0, 9));
    assertArrayEquals(new byte[] {2, 3, (byte) 200, 0, 0, 0, 0, 0, 0}, rest);
    assertEquals(-1, in.read());
    in.seek(3);
    assertEquals(200, in.readUnsignedByte());
  }

  /** A decoder that takes an EOFException for zeros is given something else before long. */
  @Test
  void stopsWhoAsksOnBehindTheEnd() throws IOException {
    HeldStream in = new HeldStream(BYTES);
    in.seek(4);
    int zeros = 0;
    IOException told = null;
    while (told == null && zeros < 1000) {
      try {
        in.readByte();
      } catch (EOFException e) {
        zeros++;
      } catch (IOException e) {
        told = e;
      }
    }
    assertEquals(64, zeros);
    assertThrows(IOException.class, in::readByte);
  }

  @Test
  void whatStandsBeforeTheEndMayBeReadAgain() throws IOException {
    HeldStream in = new HeldStream(BYTES);
    for (int i = 0; i < 100; i++) {
      in.seek(3);
      assertEquals(200, in.read());
      assertEquals(-1, in.read());
    }
  }

  /** Going back after every look must not make it endless. */
  @Test
  void stopsWhoLooksBehindTheEndForEver() throws IOException {
    HeldStream in = new HeldStream(BYTES);
    for (int i = 0; i < 4096; i++) {
      in.seek(3);
      in.read();
      assertEquals(-1, in.read());
    }
    in.seek(3);
    in.read();
    assertThrows(IOException.class, in::read);
  }
}
