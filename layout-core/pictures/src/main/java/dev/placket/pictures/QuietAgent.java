package dev.placket.pictures;

import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.svg.font.GivenFonts;
import java.awt.geom.Dimension2D;
import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Document;

/** What Batik may ask of its surroundings: nothing is loaded, nothing runs, nothing is shown. */
final class QuietAgent extends UserAgentAdapter {
  private final ViewBox viewBox;
  private final GivenFonts fonts;

  QuietAgent(ViewBox viewBox, GivenFonts fonts) {
    this.viewBox = viewBox;
    this.fonts = fonts;
  }

  @Override
  public FontFamilyResolver getFontFamilyResolver() {
    return fonts;
  }

  @Override
  public Dimension2D getViewportSize() {
    return new Rectangle2D.Double(0, 0, viewBox.width(), viewBox.height()).getBounds().getSize();
  }

  @Override
  public void displayMessage(String message) {
    // Silent: what matters is thrown.
  }

  @Override
  public void displayError(String message) {
    throw new SecurityException(message);
  }

  @Override
  public void displayError(Exception e) {
    throw new SecurityException(e.getMessage(), e);
  }

  @Override
  public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL document) {
    return new NoLoadScriptSecurity(type);
  }

  @Override
  public void checkLoadScript(String type, ParsedURL script, ParsedURL document) {
    throw new SecurityException("a script");
  }

  @Override
  public ExternalResourceSecurity getExternalResourceSecurity(
      ParsedURL resource, ParsedURL document) {
    return new NoLoadExternalResourceSecurity();
  }

  @Override
  public void checkLoadExternalResource(ParsedURL resource, ParsedURL document) {
    throw new SecurityException("something outside the drawing: " + resource);
  }

  /** A loader that loads nothing. */
  static final class NoLoader extends DocumentLoader {
    NoLoader(QuietAgent agent) {
      super(agent);
    }

    @Override
    public Document loadDocument(String uri) {
      throw new SecurityException("something outside the drawing: " + uri);
    }

    @Override
    public Document loadDocument(String uri, java.io.InputStream in) {
      throw new SecurityException("something outside the drawing: " + uri);
    }
  }
}
