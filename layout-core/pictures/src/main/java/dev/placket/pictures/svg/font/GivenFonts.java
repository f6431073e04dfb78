package dev.placket.pictures.svg.font;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.fault.ErrorText;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.svg.parse.SvgParser;
import dev.placket.pictures.typeface.GivenTypeface;
import dev.placket.pictures.typeface.Shaping;
import dev.placket.pictures.typeface.Typefaces;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.SVGFontFaceElementBridge;
import org.apache.batik.bridge.SVGFontFamily;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Finds a typeface for what a drawing asks for, and remembers what was not given. */
public final class GivenFonts implements FontFamilyResolver {
  /** Words of CSS that the typeface that comes along answers; serifs and the like it does not. */
  private static final Set<String> KINDS = Set.of("sans-serif", "system-ui");

  /** What Batik asks for where a drawing asks for nothing. */
  private static final Set<String> UNASKED = Set.of("arial", "helvetica");

  private final List<Made> made = new ArrayList<>();
  private final Map<String, List<GivenTypeface>> families = new LinkedHashMap<>();
  private final AskedFaces asked = new AskedFaces();
  private final Set<String> missing = new LinkedHashSet<>();
  private final Typefaces typefaces;
  private boolean shipped;

  /** A typeface in the document, and the characters that it has. */
  private record Made(GVTFontFamily family, Set<Integer> characters) {}

  /** Typefaces for one drawing. */
  public GivenFonts(Typefaces typefaces) {
    this.typefaces = typefaces;
  }

  /**
   * Puts the typefaces into a document, with what its text needs of them, if it has any.
   *
   * @param name of the drawing, for messages
   * @throws PictureException if none of them has a sign of its text, or it needs shaping: what
   *     would come out wrong is not drawn
   */
  public void adopt(String name, Document document, BridgeContext context) throws PictureException {
    NodeList texts = document.getElementsByTagNameNS(SvgParser.SVG, "text");
    if (texts.getLength() == 0) {
      return;
    }
    Set<Integer> characters = new TreeSet<>();
    // A space that stands alone between two spans is no text content (DOM 3 Core, textContent).
    characters.add((int) ' ');
    for (int i = 0; i < texts.getLength(); i++) {
      texts.item(i).getTextContent().codePoints().forEach(characters::add);
    }
    typefaces.given().forEach(this::add);
    add(Typefaces.shipped());
    for (List<GivenTypeface> family : families.values()) {
      for (GivenTypeface t : family) {
        made.add(made(name, t, family, characters, context, document));
      }
    }
    check(name, characters);
  }

  /** Looks at the faces that the text of a built document asks for. */
  public void compare(Document document) {
    if (!families.isEmpty()) {
      asked.look(document, families);
    }
  }

  /** Of two faces of one family, weight and style the first is used. */
  private void add(GivenTypeface face) {
    List<GivenTypeface> family =
        families.computeIfAbsent(low(face.family()), f -> new ArrayList<>());
    if (family.stream()
        .noneMatch(t -> t.weight() == face.weight() && t.italic() == face.italic())) {
      family.add(face);
    }
  }

  private void check(String name, Set<Integer> characters) throws PictureException {
    for (int c : characters) {
      String script = Shaping.script(c);
      if (script != null) {
        throw new PictureException(
            Fault.content(
                    name,
                    "its text has "
                        + sign(c)
                        + " of a script that needs shaping ("
                        + script
                        + "), which is not done here")
                .remedy("turn the text into paths and save again"));
      }
      if (shown(c) && made.stream().noneMatch(m -> m.characters.contains(c))) {
        throw new PictureException(
            Fault.content(
                    name, "no typeface that is given has the sign " + sign(c) + " of its text")
                .remedy("give one that has it")
                .remedy("turn the text into paths and save again"));
      }
    }
  }

  private static boolean shown(int c) {
    boolean blank = Character.isWhitespace(c) || Character.isSpaceChar(c);
    return !blank && !Character.isIdentifierIgnorable(c);
  }

  private static String sign(int c) {
    return String.format(Locale.ROOT, "'%s' (U+%04X)", Character.toString(c), c);
  }

  private static Made made(
      String name,
      GivenTypeface typeface,
      List<GivenTypeface> family,
      Set<Integer> characters,
      BridgeContext context,
      Document document)
      throws PictureException {
    Set<Integer> has = new TreeSet<>(characters);
    Element font;
    try {
      font = new FontElements(document).font(typeface, family, has);
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw new PictureException(
          Fault.content(
                  name,
                  "its text cannot be set in "
                      + ErrorText.line(typeface.family())
                      + ", whose file is damaged ("
                      + ErrorText.by(e)
                      + ")")
              .remedy("give another"),
          e);
    }
    document.getDocumentElement().appendChild(font);
    Element face = (Element) font.getFirstChild();
    return new Made(
        new SVGFontFamily(
            new SVGFontFaceElementBridge().createFontFace(context, face), font, context),
        has);
  }

  private static String low(String family) {
    return family.toLowerCase(Locale.ROOT);
  }

  @Override
  public @Nullable GVTFontFamily resolve(String family) {
    String low = low(family);
    // Those that are given are found in the document; only others are asked for here.
    if (!KINDS.contains(low) && !UNASKED.contains(low)) {
      missing.add(family);
    }
    return null;
  }

  @Override
  public @Nullable GVTFontFamily resolve(String family, FontFace face) {
    return resolve(family);
  }

  @Override
  public GVTFontFamily loadFont(InputStream in, FontFace face) {
    throw new SecurityException("something outside the drawing: a font");
  }

  @Override
  public GVTFontFamily getDefault() {
    shipped = true;
    GVTFontFamily last = null;
    for (Made each : made) {
      last = each.family;
    }
    if (last == null) {
      throw new IllegalStateException("text without an element of text");
    }
    return last;
  }

  @Override
  public @Nullable GVTFontFamily getFamilyThatCanDisplay(char c) {
    for (Made each : made) {
      if (each.characters.contains((int) c)) {
        return each.family;
      }
    }
    return null;
  }

  /** What to say where the typeface that comes along was used. */
  public Stream<PictureNote> notes() {
    if (!shipped) {
      return asked.notes();
    }
    String because =
        missing.isEmpty()
            ? ""
            : missing.stream().collect(Collectors.joining(", ", ", since ", " is not given"));
    String set = "its lettering is set in Liberation Sans" + ErrorText.line(because);
    PictureNote face = missing.isEmpty() ? PictureNote.plain(set) : PictureNote.changed(set);
    return Stream.concat(Stream.of(face), asked.notes());
  }
}
