package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Browser;
import dev.placket.demo.Run;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * Packs before a validator of PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1), veraPDF: what a
 * pack claims, it keeps, and what a placed page forbids, it does not claim.
 */
class ArchiveTest {
  private static final String OPEN =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120'>";
  private static final String PLAIN = OPEN + "<path d='M9 9H80V99H9Z' stroke='#000'/></svg>";

  @TempDir private Path dir;

  @BeforeAll
  static void validator() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static List<String> broken(Path pdf) throws Exception {
    TreeSet<String> broken = new TreeSet<>();
    for (PDFAFlavour standard : List.of(PDFAFlavour.PDFA_2_A, PDFAFlavour.PDFUA_1)) {
      try (InputStream in = Files.newInputStream(pdf);
          PDFAParser parser = Foundries.defaultInstance().createParser(in, standard);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
        ValidationResult result = validator.validate(parser);
        for (TestAssertion each : result.getTestAssertions()) {
          if (each.getStatus() == TestAssertion.Status.FAILED) {
            String rule = each.getRuleId().getClause() + "-" + each.getRuleId().getTestNumber();
            broken.add(standard + " " + rule + ": " + each.getMessage());
          }
        }
        assertEquals(result.isCompliant(), broken.isEmpty(), broken.toString());
      }
    }
    return List.copyOf(broken);
  }

  private static String claims(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile());
        InputStream in = document.getDocumentCatalog().getMetadata().exportXMPMetadata()) {
      String xmp = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return (xmp.contains("<pdfaid:part>2<") ? "A" : "") + (xmp.contains("<pdfuaid:") ? "UA" : "");
    }
  }

  private Path folder() throws IOException {
    return Files.createDirectory(dir.resolve("style"));
  }

  private Run fit(Path what) {
    return Run.of("fit", what, "--out", dir.resolve("out"), "--allow-soft");
  }

  private Path made(Run run) throws IOException {
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    try (Stream<Path> all = Files.list(dir.resolve("out"))) {
      return all.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
    }
  }

  private void conforms(Path pdf) throws Exception {
    assertEquals(List.of(), broken(pdf));
    assertEquals("AUA", claims(pdf));
  }

  @ParameterizedTest
  @MethodSource("dev.placket.demo.made.MadePack#papers")
  void theDemoConforms(String paper) throws Exception {
    conforms(MadePack.on(paper).pdf());
    conforms(MadePack.on(paper).blank());
    assertEquals("PDF/A-2a", MadePack.on(paper).fit().path("conformsTo").path(0).asText());
  }

  /** White lettering on black, photographs and leaders over them. */
  @Test
  void soDoItsSamples() throws Exception {
    conforms(made(fit(Path.of("src", "demo", "mg-3107", "samples.yaml"))));
  }

  @Test
  void soDoPhotographsAndTransparency() throws Exception {
    Path folder = folder();
    Files.writeString(
        folder.resolve("front.svg"),
        OPEN
            + "<defs><linearGradient id='g'><stop stop-color='#f00'/><stop offset='1'"
            + " stop-color='#00f' stop-opacity='.3'/></linearGradient><mask id='m'>"
            + "<rect width='100' height='120' fill='#888'/></mask></defs>"
            + "<path d='M9 9H90V99H9Z' fill='url(#g)' stroke='#000'/>"
            + "<g opacity='.5' style='mix-blend-mode:multiply'><circle cx='50' cy='50' r='30'"
            + " fill='#fa0'/></g><rect x='20' y='70' width='50' height='20' mask='url(#m)'/>"
            + "<text x='20' y='30' font-size='9' fill-opacity='.6'>Tunic</text></svg>");
    BufferedImage colour = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = colour.createGraphics();
    g.setPaint(new GradientPaint(0, 0, Color.RED, 300, 200, Color.BLUE));
    g.fillRect(0, 0, 300, 200);
    g.dispose();
    ImageIO.write(colour, "jpg", folder.resolve("cloth-swatch.jpg").toFile());
    BufferedImage grey = new BufferedImage(300, 200, BufferedImage.TYPE_BYTE_GRAY);
    grey.createGraphics().drawImage(colour, 0, 0, null);
    ImageIO.write(grey, "jpg", folder.resolve("grey-photo.jpg").toFile());
    BufferedImage clear = new BufferedImage(300, 200, BufferedImage.TYPE_INT_ARGB);
    clear.setRGB(100, 100, 0x80FF0000);
    clear.createGraphics().fillOval(20, 20, 200, 150);
    ImageIO.write(clear, "png", folder.resolve("pocket-detail.png").toFile());
    conforms(made(fit(folder)));
  }

  @Test
  void soDoCalloutsTablesAndTwoLanguages() throws Exception {
    Files.writeString(dir.resolve("front.svg"), PLAIN);
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        languages: [en, de]
        sheets:
          flat:
            name: {en: Flat sheet, de: Zeichnung}
            areas: [views list]
            windows: {views: }
            tables:
              list:
                columns: [{heading: No., marks: true}, {heading: {en: Part, de: Teil}}]
                rows: [["1", {en: Hem, de: Saum}]]
            flats:
              front:
                file: front.svg
                role: front
                points: {hem: {x: 40, y: 98}}
                callouts: {c: {point: hem, mark: 1, text: {en: Turned twice, de: doppelt}}}
        """);
    conforms(made(fit(pack)));
  }

  @Test
  void soDoPagesOfOtherPrograms() throws Exception {
    Path folder = folder();
    Path page = dir.resolve("page.html");
    Files.writeString(
        page,
        "<!DOCTYPE html><html lang='en'><title>Front</title><style>@page{margin:0;size:300px"
            + " 400px}</style><h1>Front</h1><p style='opacity:.5'>Cuff and collar</p></html>");
    Browser.print(page, folder.resolve("front.pdf"), dir);
    Files.writeString(dir.resolve("plain.svg"), PLAIN);
    Poppler.run(
        dir,
        "rsvg-convert",
        "-f",
        "pdf",
        "-o",
        folder.resolve("back.pdf").toString(),
        dir.resolve("plain.svg").toString());
    conforms(made(fit(folder)));
  }

  /** What a page may bring that the standard forbids. */
  enum Forbidden {
    INKS {
      @Override
      void draw(PDDocument document, PDPageContentStream out) throws IOException {
        out.setNonStrokingColor(0.1f, 0.8f, 0, 0);
      }
    },
    SMOOTHED {
      @Override
      void draw(PDDocument document, PDPageContentStream out) throws IOException {
        BufferedImage image = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        PDImageXObject picture = LosslessFactory.createFromImage(document, image);
        picture.setInterpolate(true);
        out.drawImage(picture, 20, 20, 30, 30);
      }
    },
    TRANSFER {
      @Override
      void draw(PDDocument document, PDPageContentStream out) throws IOException {
        PDExtendedGraphicsState state = new PDExtendedGraphicsState();
        state.getCOSObject().setItem(COSName.TR, COSName.getPDFName("Identity"));
        out.setGraphicsStateParameters(state);
      }
    },
    BLEND {
      @Override
      void draw(PDDocument document, PDPageContentStream out) throws IOException {
        COSDictionary state = new COSDictionary();
        state.setItem(COSName.BM, COSName.getPDFName("Mystery"));
        out.setGraphicsStateParameters(new PDExtendedGraphicsState(state));
      }
    },
    DEEP {
      @Override
      void draw(PDDocument document, PDPageContentStream out) throws IOException {
        for (int i = 0; i < 30; i++) {
          out.saveGraphicsState();
        }
        out.addRect(20, 20, 9, 9);
        out.fill();
        for (int i = 0; i < 30; i++) {
          out.restoreGraphicsState();
        }
      }
    },
    ALTERNATES {
      @Override
      void draw(PDDocument document, PDPageContentStream out) throws IOException {
        BufferedImage image = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        PDImageXObject picture = LosslessFactory.createFromImage(document, image);
        picture
            .getCOSObject()
            .setItem(COSName.getPDFName("Alternates"), new org.apache.pdfbox.cos.COSArray());
        out.drawImage(picture, 20, 20, 30, 30);
      }
    };

    abstract void draw(PDDocument document, PDPageContentStream out) throws IOException;
  }

  @ParameterizedTest
  @EnumSource(Forbidden.class)
  void aPageThatBringsWhatIsForbiddenTakesTheClaimAway(Forbidden what) throws Exception {
    Path folder = folder();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(200, 160));
      document.addPage(page);
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        what.draw(document, out);
        out.addRect(10, 10, 150, 120);
        out.fill();
      }
      document.save(folder.resolve("front.pdf").toFile());
    }
    Run run = fit(folder);
    Path pdf = made(run);
    assertEquals("", claims(pdf));
    String report = run.out().replaceAll("\\s+", " ");
    assertTrue(report.contains("PDF/A-2a and PDF/UA-1: not claimed, because of front.pdf"), report);
    var fit = new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
    assertTrue(fit.path("conformsTo").isArray() && fit.path("conformsTo").isEmpty());
    // The validator finds more than the missing claim, so that the claim would be wrong.
    List<String> others =
        broken(pdf).stream().filter(b -> !b.contains("dentification extension schema")).toList();
    assertFalse(others.isEmpty(), "the validator knows nothing against " + what);
  }

  /** The primaries of sRGB as IEC 61966-2-1 has them, brought to D50 by Java's own profile. */
  @Test
  void theProfileIsThatOfJava() throws Exception {
    try (PDDocument document = Loader.loadPDF(MadePack.on("A4").pdf().toFile())) {
      var intent = document.getDocumentCatalog().getOutputIntents().get(0);
      byte[] bytes;
      try (InputStream in = intent.getDestOutputIntent().createInputStream()) {
        bytes = in.readAllBytes();
      }
      assertTrue(bytes.length < 1000, "" + bytes.length);
      var profile =
          new java.awt.color.ICC_ColorSpace(
              java.awt.color.ICC_Profile.getInstance(new ByteArrayInputStream(bytes)));
      for (float[] rgb : new float[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.2f, 0.5f, 0.8f}}) {
        float[] ours = profile.toCIEXYZ(rgb);
        float[] javas = new Color(rgb[0], rgb[1], rgb[2]).getColorSpace().toCIEXYZ(rgb);
        for (int i = 0; i < 3; i++) {
          assertEquals(javas[i], ours[i], 0.002);
        }
      }
    }
  }
}
