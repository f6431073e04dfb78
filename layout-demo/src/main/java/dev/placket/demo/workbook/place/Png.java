package dev.placket.demo.workbook.place;

import dev.placket.layout.density.PixelDensity;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Encodes pictures as PNG with the density they are placed at (chunk pHYs). */
final class Png {
  private static final String TREE = "javax_imageio_png_1.0";

  private Png() {}

  static byte[] encode(BufferedImage image, PixelDensity density) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), null);
      IIOMetadataNode physical = new IIOMetadataNode("pHYs");
      physical.setAttribute(
          "pixelsPerUnitXAxis", Long.toString(Math.round(density.x().perMetre())));
      physical.setAttribute(
          "pixelsPerUnitYAxis", Long.toString(Math.round(density.y().perMetre())));
      physical.setAttribute("unitSpecifier", "meter");
      IIOMetadataNode tree = new IIOMetadataNode(TREE);
      tree.appendChild(physical);
      metadata.mergeTree(TREE, tree);
      writer.setOutput(out);
      writer.write(new IIOImage(image, null, metadata));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
