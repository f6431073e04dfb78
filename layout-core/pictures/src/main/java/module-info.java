/** Reads and prepares picture files: drawing bounds, densities and print-ready pictures. */
module dev.placket.pictures {
  requires static transitive org.jspecify;
  requires transitive dev.placket.layout;
  requires transitive java.desktop;
  requires org.apache.xmlgraphics.batik.bridge;
  requires org.apache.xmlgraphics.batik.gvt;
  requires org.apache.xmlgraphics.batik.anim;
  requires org.apache.xmlgraphics.batik.css;
  requires org.apache.xmlgraphics.batik.awt.util;
  requires org.apache.xmlgraphics.batik.util;
  requires jdk.xml.dom;
  requires com.twelvemonkeys.imageio.bmp;
  requires com.twelvemonkeys.imageio.core;
  requires com.twelvemonkeys.imageio.jpeg;
  requires com.twelvemonkeys.imageio.tiff;
  requires com.twelvemonkeys.imageio.webp;
  requires org.apache.fontbox;
  requires transitive org.apache.pdfbox;
  requires org.apache.pdfbox.io;
  requires org.htmlunit.cssparser;

  exports dev.placket.pictures;
  exports dev.placket.pictures.base;
  exports dev.placket.pictures.fault;
  exports dev.placket.pictures.path;
  exports dev.placket.pictures.prepare;
  exports dev.placket.pictures.typeface;
}
