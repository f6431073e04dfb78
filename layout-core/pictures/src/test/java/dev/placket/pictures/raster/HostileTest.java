package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that were made to do harm end, soon and small, in one message. */
class HostileTest {
  private static final String OPEN =
      "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
          + " viewBox='0 0 100 100'>";

  record Case(String name, byte[] bytes) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Case svg(String name, String inner) {
    return new Case(name + ".svg", (OPEN + inner + "</svg>").getBytes(StandardCharsets.UTF_8));
  }

  static Stream<Case> drawings() {
    String uses = nested("<use href='#l%d'/>", 9);
    String patterns =
        "<defs><pattern id='p0' width='1' height='1'><rect width='1' height='1'/></pattern>"
            + chain("<pattern id='p%d' width='1' height='1'>%s</pattern>", "p")
            + "</defs><rect width='9' height='9' fill='url(#p9)'/>";
    String css = ".a{fill:red}".repeat(20_000);
    return Stream.of(
        svg("nested-uses", uses + "<use href='#l9'/>"),
        svg("nested-uses-of-old", uses.replace("href", "xlink:href") + "<use xlink:href='#l9'/>"),
        svg("nested-patterns", patterns),
        svg("circle-of-uses", "<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g>"),
        svg(
            "circle-of-clips",
            "<clipPath id='c' clip-path='url(#c)'><path d='M0 0h9v9z'/></clipPath>"
                + "<rect clip-path='url(#c)' width='9' height='9'/>"),
        svg("deep", "<g>".repeat(300_000) + "</g>".repeat(300_000)),
        svg("many-elements", "<path/>".repeat(300_000)),
        svg("many-rules", "<style>" + css + "</style>" + "<g class='a'/>".repeat(20_000)),
        svg(
            "fine-dashes",
            "<path d='M0 50H100' stroke='#000' stroke-dasharray='0.0000001 0.0000001'/>"),
        svg(
            "fine-dashes-by-style",
            "<style>path{stroke:#000;stroke-dasharray:1e-7}</style><path d='M0 50H100'/>"),
        svg(
            "fine-dashes-far-away",
            "<path d='M-1e9 50H1e9' stroke='#000' stroke-dasharray='0.1'/>"),
        svg(
            "fine-dashes-in-a-pattern",
            "<pattern id='p' width='9' height='9'><path d='M0 5H100' stroke='#000'"
                + " stroke-dasharray='1e-7'/></pattern><rect width='9' height='9' fill='url(#p)'/>"),
        svg(
            "fine-dashes-in-a-marker",
            "<marker id='m'><path d='M0 5H100' stroke='#000' stroke-dasharray='1e-7'/></marker>"
                + "<path d='M0 0L5 5L9 9' stroke='#000' marker-mid='url(#m)'/>"),
        svg("script", "<script>for(;;);</script>"),
        svg("handler", "<rect width='3' height='3' onclick='x()'/>"),
        svg("javascript-link", "<use href='javascript:x()'/>"),
        svg("data-link", "<use href='data:image/svg+xml,%3Csvg/%3E#a'/>"),
        new Case(
            "billion-laughs.svg",
            ("<!DOCTYPE svg [<!ENTITY a 'ha'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;'>]>"
                    + OPEN
                    + "<text>&b;</text></svg>")
                .getBytes(StandardCharsets.UTF_8)),
        new Case(
            "parameter-entity.svg",
            ("<!DOCTYPE svg [<!ENTITY % p SYSTEM 'file:///etc/hostname'> %p;]>"
                    + OPEN
                    + "<rect width='3' height='3'/></svg>")
                .getBytes(StandardCharsets.UTF_8)),
        new Case("zip-bomb.svgz", zipped(OPEN, 2_000)),
        new Case("not-ending.svgz", Arrays.copyOf(zipped(OPEN + "<rect width='3'/></svg>", 0), 60)),
        new Case(
            "cut.svg", (OPEN + "<rect width='3' height='3'/>").getBytes(StandardCharsets.UTF_8)));
  }

  private static String nested(String use, int levels) {
    StringBuilder b = new StringBuilder("<defs><rect id='l0' width='1' height='1'/>");
    for (int i = 1; i <= levels; i++) {
      b.append("<g id='l").append(i).append("'>");
      b.append(String.format(use, i - 1).repeat(10)).append("</g>");
    }
    return b + "</defs>";
  }

  private static String chain(String form, String id) {
    StringBuilder b = new StringBuilder();
    for (int i = 1; i <= 9; i++) {
      String fill = "<rect width='1' height='1' fill='url(#" + id + (i - 1) + ")'/>";
      b.append(String.format(form, i, fill.repeat(10)));
    }
    return b.toString();
  }

  private static byte[] zipped(String start, int mebibytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream gz = new GZIPOutputStream(out)) {
      gz.write(start.getBytes(StandardCharsets.UTF_8));
      byte[] blank = new byte[1 << 20];
      Arrays.fill(blank, (byte) ' ');
      for (int i = 0; i < Math.min(mebibytes, 200); i++) {
        gz.write(blank);
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return out.toByteArray();
  }

  static Stream<Case> rasters() {
    PngWriter png = new PngWriter(4, 4, 8, 6);
    byte[] good = png.write(new int[64]);
    png.interlaced = true;
    byte[] interlaced = png.write(new int[64]);
    byte[] jpeg = JpegWriter.of(new java.awt.image.BufferedImage(16, 16, 1)).bytes();
    byte[] lyingJpeg = jpeg.clone();
    int frame = JpegWriter.find(jpeg, 0xC0);
    Arrays.fill(lyingJpeg, frame + 5, frame + 9, (byte) 0xFF);
    return Stream.of(
        new Case("huge.png", sized(good, 50_000, 50_000)),
        new Case("most.png", sized(good, Integer.MAX_VALUE, Integer.MAX_VALUE)),
        new Case("negative.png", sized(good, -4, 4)),
        new Case("empty.png", sized(good, 0, 4)),
        new Case("lying.png", sized(good, 9_000, 9_000)),
        new Case("lying-interlaced.png", sized(interlaced, 9_000, 9_000)),
        new Case("wide.png", sized(good, 190_000_000, 1)),
        new Case("signature-only.png", Arrays.copyOf(good, 8)),
        new Case("header-only.png", Arrays.copyOf(good, 33)),
        new Case("without-end.png", Arrays.copyOf(good, good.length - 12)),
        new Case("long-part.png", longPart(good)),
        new Case("lying.jpg", lyingJpeg),
        new Case("cut.jpg", Arrays.copyOf(jpeg, jpeg.length / 2)),
        new Case("start-only.jpg", Arrays.copyOf(jpeg, 4)),
        new Case("strips.tif", tiff(60_000, 60_000, 1)),
        new Case("counts.tif", tiff(10, 10, 0x7FFFFFFF)),
        new Case("no-size.tif", tiff(0, 0, 1)),
        new Case("lying.gif", gif(65_535, 65_535)),
        new Case("lying.bmp", bmp(100_000, 100_000)),
        new Case("lying.webp", webp()),
        new Case("nothing", new byte[0]),
        new Case("text.png", "no picture".getBytes(StandardCharsets.UTF_8)));
  }

  private static byte[] sized(byte[] png, int width, int height) {
    ByteBuffer b = ByteBuffer.wrap(png.clone()).putInt(16, width).putInt(20, height);
    CRC32 crc = new CRC32();
    crc.update(b.array(), 12, 17);
    return b.putInt(29, (int) crc.getValue()).array();
  }

  private static byte[] longPart(byte[] png) {
    return ByteBuffer.wrap(png.clone()).putInt(33, 0x7FFFFFF0).array();
  }

  /** Width, height and a count of strip offsets, nothing behind them. */
  private static byte[] tiff(int width, int height, int count) {
    ByteBuffer b = ByteBuffer.allocate(200).order(ByteOrder.LITTLE_ENDIAN);
    b.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8).putShort((short) 7);
    int[][] entries = {
      {256, width, 1},
      {257, height, 1},
      {258, 8, 1},
      {259, 1, 1},
      {262, 1, 1},
      {273, 100, count},
      {279, 100, count}
    };
    for (int[] e : entries) {
      b.putShort((short) e[0]).putShort((short) 4).putInt(e[2]).putInt(e[1]);
    }
    return b.array();
  }

  private static byte[] gif(int width, int height) {
    ByteBuffer b = ByteBuffer.allocate(40).order(ByteOrder.LITTLE_ENDIAN);
    b.put("GIF89a".getBytes(StandardCharsets.US_ASCII));
    b.putShort((short) width).putShort((short) height).put(new byte[3]);
    b.put((byte) 0x2C).putInt(0).putShort((short) width).putShort((short) height).put((byte) 0);
    return b.array();
  }

  private static byte[] bmp(int width, int height) {
    ByteBuffer b = ByteBuffer.allocate(60).order(ByteOrder.LITTLE_ENDIAN);
    b.put((byte) 'B').put((byte) 'M').putInt(60).putInt(0).putInt(54).putInt(40);
    b.putInt(width).putInt(height).putShort((short) 1).putShort((short) 24);
    return b.array();
  }

  private static byte[] webp() {
    ByteBuffer b = ByteBuffer.allocate(40).order(ByteOrder.LITTLE_ENDIAN);
    b.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(32);
    b.put("WEBPVP8L".getBytes(StandardCharsets.US_ASCII)).putInt(20).put((byte) 0x2F);
    return b.putInt(0x0FFFFFFF).array();
  }

  @ParameterizedTest
  @MethodSource({"drawings", "rasters"})
  void endsInOneMessage(Case hostile) {
    for (int way = 0; way < 2; way++) {
      boolean probing = way == 0;
      PictureException e =
          assertThrows(
              PictureException.class,
              () -> {
                PictureSource source = PictureSource.of(hostile.name, hostile.bytes);
                if (probing) {
                  PictureReader.probe(source, ReadLimits.DEFAULT);
                } else {
                  PictureReader.read(source, ReadLimits.DEFAULT);
                }
              });
      String message = String.valueOf(e.getMessage());
      assertTrue(message.startsWith(hostile.name), message);
      assertTrue(message.contains("; "), message);
      assertFalse(message.contains("\n") || message.contains("Exception"), message);
      assertTrue(message.length() < 400, message);
    }
  }

  @Test
  void noAddressAndNoFileIsTouchedThatWasNotGiven(@TempDir Path dir) throws Exception {
    AtomicInteger asked = new AtomicInteger();
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          asked.incrementAndGet();
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
    try {
      String there = "http://127.0.0.1:" + server.getAddress().getPort() + "/a.svg";
      Path secret = Files.writeString(dir.resolve("secret.svg"), OPEN + "</svg>");
      for (String address : List.of(there, secret.toUri().toString(), "secret.svg")) {
        for (String inner :
            List.of(
                "<image href='%s' width='9' height='9'/>",
                "<use href='%s#a'/>",
                "<use xlink:href='%s#a'/>",
                "<rect width='9' height='9' fill='url(%s#a)'/>",
                "<rect width='9' height='9' style='filter:url(\"%s#a\")'/>",
                "<filter id='f'><feImage href='%s'/></filter><rect filter='url(#f)'/>",
                "<text><tref xlink:href='%s#a'/></text>",
                "<color-profile xlink:href='%s' name='x'/><rect width='9' height='9'/>",
                "<script href='%s'/>")) {
          byte[] svg =
              (OPEN + inner.formatted(address) + "</svg>").getBytes(StandardCharsets.UTF_8);
          Path file = Files.write(dir.resolve("a.svg"), svg);
          assertThrows(
              PictureException.class,
              () -> PictureReader.read(PictureSource.of(file), ReadLimits.DEFAULT),
              inner + address);
        }
        for (String inner :
            List.of(
                "<style>@import url(%s);</style>",
                "<style>@font-face{font-family:x;src:url(%s)}</style>",
                "<linearGradient id='g' xlink:href='%s#a'/><path d='M0 0' fill='url(#g)'/>")) {
          String shown = "<rect width='9' height='9'/>" + inner.formatted(address);
          byte[] svg = (OPEN + shown + "</svg>").getBytes(StandardCharsets.UTF_8);
          PictureReader.read(PictureSource.of("a.svg", svg), ReadLimits.DEFAULT);
        }
        String doctype = "<!DOCTYPE svg SYSTEM '" + address + "'>";
        String sheet = "<?xml-stylesheet href='" + address + "' type='text/css'?>";
        for (String before : List.of(doctype, sheet)) {
          byte[] svg =
              (before + OPEN + "<rect width='9' height='9'/></svg>")
                  .getBytes(StandardCharsets.UTF_8);
          PictureReader.read(PictureSource.of("a.svg", svg), ReadLimits.DEFAULT);
        }
      }
      assertEquals(0, asked.get(), "nothing was asked of the address");
    } finally {
      server.stop(0);
    }
  }

  @Test
  void ofAHugePictureOnlyTheHeaderIsRead() {
    byte[] huge = sized(new PngWriter(4, 4, 8, 0).write(new int[16]), 40_000, 40_000);
    AtomicInteger read = new AtomicInteger();
    PictureSource endless =
        new PictureSource() {
          @Override
          public String name() {
            return "huge.png";
          }

          @Override
          public InputStream open() {
            return new InputStream() {
              private int at;

              @Override
              public int read() {
                read.incrementAndGet();
                return at < 60 ? huge[at++] & 255 : 0;
              }
            };
          }
        };
    assertThrows(PictureException.class, () -> PictureReader.probe(endless, ReadLimits.DEFAULT));
    assertTrue(read.get() < 20_000, "a few windows, not the file: " + read.get());
  }
}
