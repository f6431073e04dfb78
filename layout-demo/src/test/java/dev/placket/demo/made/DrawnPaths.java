package dev.placket.demo.made;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.parser.AWTPathProducer;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The coordinates of paths, and of the {@code d} attributes of a drawing's file. */
final class DrawnPaths {
  private DrawnPaths() {}

  /** The stroked paths of a drawing in file order, read from its text. */
  static List<Shape> stroked(Path svg) throws IOException {
    try {
      NodeList all =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(svg.toFile())
              .getElementsByTagName("path");
      List<Shape> paths = new ArrayList<>();
      for (int i = 0; i < all.getLength(); i++) {
        Element path = (Element) all.item(i);
        if (!path.getAttribute("stroke").equals("none")) {
          StringReader d = new StringReader(path.getAttribute("d"));
          paths.add(AWTPathProducer.createShape(d, PathIterator.WIND_NON_ZERO));
        }
      }
      return paths;
    } catch (SAXException | ParserConfigurationException e) {
      throw new IOException(e);
    }
  }

  /** All x, then all y of a path's points, control points with them. */
  static double[][] points(Shape path) {
    List<Double> xs = new ArrayList<>();
    List<Double> ys = new ArrayList<>();
    double[] at = new double[6];
    for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
      int count =
          switch (i.currentSegment(at)) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 1;
            case PathIterator.SEG_QUADTO -> 2;
            case PathIterator.SEG_CUBICTO -> 3;
            default -> 0;
          };
      for (int p = 0; p < count; p++) {
        xs.add(at[2 * p]);
        ys.add(at[2 * p + 1]);
      }
    }
    return new double[][] {
      xs.stream().mapToDouble(d -> d).toArray(), ys.stream().mapToDouble(d -> d).toArray()
    };
  }

  /** The largest less the smallest. */
  static double extent(double[] values) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double v : values) {
      least = Math.min(least, v);
      most = Math.max(most, v);
    }
    return most - least;
  }
}
