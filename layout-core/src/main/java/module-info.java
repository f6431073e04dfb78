/**
 * Fits garment drawings onto the ruled sheets of a spec pack: sheets and flats in, placements and
 * densities out.
 */
module dev.placket.layout {
  requires static transitive org.jspecify;
  requires static java.desktop;
  requires static org.apache.xmlgraphics.batik.bridge;
  requires static org.apache.xmlgraphics.batik.gvt;
  requires static org.apache.xmlgraphics.batik.anim;
  requires static org.apache.xmlgraphics.batik.css;
  requires static org.apache.xmlgraphics.batik.awt.util;
  requires static org.apache.xmlgraphics.batik.util;
  requires static jdk.xml.dom;
  requires static com.twelvemonkeys.imageio.bmp;
  requires static com.twelvemonkeys.imageio.core;
  requires static com.twelvemonkeys.imageio.jpeg;
  requires static com.twelvemonkeys.imageio.tiff;
  requires static com.twelvemonkeys.imageio.webp;
  requires static org.apache.commons.imaging;
  requires static org.apache.fontbox;
  requires static org.apache.pdfbox.io;
  requires static org.htmlunit.cssparser;

  exports dev.placket.layout.check;
  exports dev.placket.layout.density;
  exports dev.placket.layout.fit;
  exports dev.placket.layout.flat;
  exports dev.placket.layout.image;
  exports dev.placket.layout.image.prepare;
  exports dev.placket.layout.sheet;
  exports dev.placket.layout.units;
}
