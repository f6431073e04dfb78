package dev.placket.demo.console;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** A stream for terminals of few letters: the report's own signs are spelled with plain ones. */
public final class PlainSigns extends PrintStream {
  public PlainSigns(OutputStream out) {
    super(out, true, StandardCharsets.US_ASCII);
  }

  @Override
  public void print(String text) {
    super.print(text.replace('×', 'x').replace('–', '-').replace("…", "~"));
  }
}
