package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where, by whom and with what a picture was made never reaches anything that is written. */
class MetadataTest {
  /** A word that stands for the place, the author and the software, and for nothing else. */
  private static final String SECRET = "Mossgantry-Attic-48.2082N";

  @TempDir Path dir;

  private static BufferedImage image() {
    BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 300, 200);
    g.setColor(Color.BLACK);
    g.drawOval(20, 20, 200, 150);
    g.dispose();
    return image;
  }

  private static byte[] written(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image(), format, out);
    return out.toByteArray();
  }

  private static byte[] inserted(byte[] file, int at, byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(file, 0, at);
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    out.write(file, at, file.length - at);
    return out.toByteArray();
  }

  private static byte[] chunk(String type, String body) {
    byte[] name = (type + body).getBytes(StandardCharsets.ISO_8859_1);
    CRC32 crc = new CRC32();
    crc.update(name);
    ByteBuffer b = ByteBuffer.allocate(8 + name.length).putInt(name.length - 4).put(name);
    return b.putInt((int) crc.getValue()).array();
  }

  private static byte[] segment(int marker, String body) {
    byte[] text = body.getBytes(StandardCharsets.ISO_8859_1);
    ByteBuffer b = ByteBuffer.allocate(4 + text.length).put((byte) 0xFF).put((byte) marker);
    return b.putShort((short) (2 + text.length)).put(text).array();
  }

  /** An Exif block whose artist, software and place are the word. */
  private static String exif() {
    StringBuilder b = new StringBuilder("MM\0*\0\0\0\10\0\3");
    for (int tag : new int[] {0x0131, 0x013B, 0x8825}) {
      b.append((char) (tag >> 8)).append((char) (tag & 255)).append("\0\2\0\0\0");
      b.append((char) (SECRET.length() + 1)).append("\0\0\0\62");
    }
    return b + "\0\0\0\0" + SECRET + "\0";
  }

  private Path flats() throws IOException {
    Path flats = Files.createDirectory(dir.resolve("style"));
    Files.writeString(
        flats.resolve("front.svg"),
        "<?xml version='1.0'?><!-- "
            + SECRET
            + " --><svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'><title>"
            + SECRET
            + "</title><desc>"
            + SECRET
            + "</desc><metadata><a>"
            + SECRET
            + "</a></metadata><rect x='9' y='9' width='70' height='80'/></svg>");
    Files.write(
        flats.resolve("collar-detail.png"),
        inserted(
            written("png"),
            33,
            chunk("tEXt", "Author\0" + SECRET),
            chunk("tEXt", "Software\0" + SECRET),
            chunk("iTXt", "XML:com.adobe.xmp\0\0\0\0\0" + SECRET),
            chunk("eXIf", exif())));
    Files.write(
        flats.resolve("hem-detail.jpg"),
        inserted(
            written("jpg"),
            20,
            segment(0xE1, "Exif\0\0" + exif()),
            segment(0xE1, "http://ns.adobe.com/xap/1.0/\0" + SECRET),
            segment(0xFE, SECRET)));
    return flats;
  }

  @Test
  void reachesNothingThatIsWrittenOrSaid() throws Exception {
    Path flats = flats();
    try (Stream<Path> all = Files.list(flats)) {
      for (Path file : all.toList()) {
        assertTrue(holds(Files.readAllBytes(file)), file + " holds the word");
      }
    }
    Path out = dir.resolve("made");
    assertFalse(run("fit", flats.toString(), "--out", out.toString(), "--blank").contains(SECRET));
    assertFalse(
        run(
                "probe",
                "--json",
                flats.resolve("front.svg").toString(),
                flats.resolve("collar-detail.png").toString(),
                flats.resolve("hem-detail.jpg").toString())
            .contains(SECRET));
    List<Path> made = new ArrayList<>();
    try (Stream<Path> all = Files.walk(out)) {
      all.filter(Files::isRegularFile).forEach(made::add);
    }
    assertTrue(made.size() >= 3, made::toString);
    for (Path file : made) {
      assertFalse(holds(Files.readAllBytes(file)), file::toString);
      if (file.toString().endsWith(".pdf")) {
        assertStreamsAreSilent(file);
      }
    }
  }

  private static void assertStreamsAreSilent(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
        COSObject object = document.getDocument().getObjectFromPool(key);
        if (object.getObject() instanceof COSStream stream) {
          try (InputStream in = stream.createInputStream()) {
            assertFalse(holds(in.readAllBytes()), pdf + " " + key);
          }
        }
      }
    }
  }

  private static boolean holds(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1).contains(SECRET);
  }

  private static String run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
    int code = Main.run(args, stream, stream);
    String said = out.toString(StandardCharsets.UTF_8);
    assertTrue(code == 0 || code == 3, said);
    assertEquals(-1, said.indexOf("Exception"), said);
    return said;
  }
}
