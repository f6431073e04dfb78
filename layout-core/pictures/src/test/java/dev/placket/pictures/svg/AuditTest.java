package dev.placket.pictures.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** Small drawings, each with the note that it gets, or none. */
class AuditTest {
  private static final String RECT = "<rect id='r' width='9' height='9' ";

  static List<String> notes(String inside) {
    return Audit.of(
        root(
            "<svg xmlns='http://www.w3.org/2000/svg' xmlns:o='urn:other' viewBox='0 0 9 9'>"
                + inside
                + "</svg>"));
  }

  static Element root(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      return factory
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
          .getDocumentElement();
    } catch (Exception e) {
      throw new IllegalStateException(svg, e);
    }
  }

  /** SVG 2's clause, or that of the CSS module, stands beside each line of the list. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          style='mix-blend-mode:plus-lighter'    | set to 'plus-lighter' is drawn without mixing
          style='mix-blend-mode:multiply'        |
          style='mix-blend-mode:normal'          |
          filter='url(#none)'                    | filter effects are left out
          filter='none'                          |
          style='isolation:isolate'              |
          isolation='isolate'                    | 'isolation' with the value 'isolate'
          mask='url(#m)'                         |
          clip-path='circle(4)'                  | a clip that is no path
          clip-path='url(#c)'                    |
          vector-effect='non-scaling-stroke' stroke='red' | keep their width
          vector-effect='non-scaling-stroke'     |
          paint-order='stroke' stroke='red'      |
          paint-order='stroke'                   |
          style='-inkscape-x:3;fill:#fff'        |
          stroke-linejoin='arcs' stroke='red'    | drawn as mitres
          fill='url(#g) #abc'                    |
          fill='#abcde'                          | 'fill' with the value '#abcde' is not known
          fill='context-fill'                    | taken over from the outer element
          sparkle='yes'                          | 'sparkle' is not known here
          data-sparkle='yes' aria-label='x'      |
          o:sparkle='yes'                        |
          style='sparkle:yes'                    | 'sparkle' is not known here
          x='1' cx='4'                           |
          display='none' sparkle='yes'           |
          visibility='hidden' sparkle='yes'      |
          """)
  void notesWhatIsNotDrawnRight(String attributes, String note) {
    List<String> notes = notes(RECT + attributes + "/>");
    if (note == null) {
      assertEquals(List.of(), notes);
    } else {
      assertEquals(1, notes.size(), notes.toString());
      assertTrue(notes.get(0).contains(note), notes.toString());
      assertTrue(notes.get(0).endsWith("(in 'r')"), notes.toString());
    }
  }

  /** SVG 2, 8.10 (boxes of text), 11.4 (rotate) and 11.8 (textPath). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          <text fill='url(#g)'>a</text>                            | measured by the box of lettering
          <text fill='url(#g)'><tspan fill='#000'>a</tspan></text> |
          <text fill='url(#o)'>a</text>                            |
          <text fill='url(#u)'>a</text>                            |
          <text fill='url(#p)'>a</text>                            | measured by the box of lettering
          <text clip-path='url(#c)'>a</text>                       | measured by the box of lettering
          <text mask='url(#k)'>a</text>                            |
          <rect fill='url(#g)'/>                                   |
          <text rotate='9'>ab</text>                               |
          <text rotate='9 8'>ab</text>                             |
          <text rotate='9 8'>a<tspan>b</tspan></text>              | turned one by one
          <text rotate='9'>a<tspan rotate='3'>b</tspan></text>     | turned one by one
          <text rotate='9'><textPath href='#l'>b</textPath></text> | turned one by one
          <text><textPath href='#l'>b</textPath></text>            |
          <text>a<textPath href='#l'>b</textPath></text>           | after other lettering
          """)
  void partsOfTextThatDoNotGoTogetherAreNoted(String text, String note) {
    String stops = "<stop/><stop offset='1'/>";
    List<String> notes =
        notes(
            "<linearGradient id='g'>"
                + stops
                + "</linearGradient><linearGradient id='o'><stop/></linearGradient>"
                + "<linearGradient id='u' gradientUnits='userSpaceOnUse'>"
                + stops
                + "</linearGradient><pattern id='p'/><mask id='k'/><path id='l'/>"
                + "<clipPath id='c' clipPathUnits='objectBoundingBox'/>"
                + text);
    assertEquals(note == null ? 0 : 1, notes.size(), notes.toString());
    assertTrue(note == null || notes.get(0).contains(note), notes.toString());
  }

  @Test
  void everyLineOfTheListEndsInRightOrInANote() {
    DrawnList list = DrawnList.shipped();
    for (Entry entry : list.entries()) {
      assertTrue(
          entry.right() || !list.note(entry.verdict()).isBlank(), () -> "line " + entry.line());
    }
  }

  /** CSS Fonts 4, 2.2: any number from 1 to 1000, and two steps from the inherited weight. */
  @ParameterizedTest
  @CsvSource({"bold, 0", "700, 0", "650, 1", "lighter, 1"})
  void weightsAreHundreds(String weight, int notes) {
    assertEquals(notes, notes("<text font-weight='" + weight + "'>a</text>").size());
  }

  @Test
  void whatIsDrawnNowhereIsNotNoted() {
    String odd = "<g sparkle='yes'><unknown/></g>";
    assertEquals(List.of(), notes("<defs>" + odd + "</defs>"));
    assertEquals(List.of(), notes("<symbol id='s'>" + odd + "</symbol>"));
    assertEquals(List.of(), notes("<g display='none'>" + odd + "</g>"));
    assertEquals(2, notes("<symbol id='s'>" + odd + "</symbol><use href='#s' width='3'/>").size());
    assertEquals(List.of(), notes("<text dominant-baseline='middle'> <tspan/></text>"));
  }

  @Test
  void paintIsFollowedToWhereItLeads() {
    String gradient =
        "<defs><radialGradient id='a' sparkle='0.2'/><radialGradient id='b' href='#a'/></defs>";
    assertEquals(List.of(), notes(gradient + RECT + "/>"));
    assertEquals(1, notes(gradient + "<g style='fill:url(\"#b\")'>" + RECT + "/></g>").size());
  }

  @Test
  void oneKindIsOneNoteWithItsCount() {
    List<String> notes =
        notes("<g id='first'><path filter='url(#a)'/></g><path filter='url(#b)'/><path id='c'/>");
    assertEquals(
        List.of(
            "filter effects are left out; flatten them before export (2 times, first in 'first')"),
        notes);
  }

  @Test
  void inheritedPropertiesAreJudgedWhereTheyAreDrawn() {
    assertEquals(List.of(), notes("<g dominant-baseline='middle'>" + RECT + "/></g>"));
    assertEquals(1, notes("<g dominant-baseline='middle'><text>a</text></g>").size());
    assertEquals(
        List.of(),
        notes(
            "<g dominant-baseline='middle'>"
                + "<text dominant-baseline='auto'>a</text><text dominant-baseline='auto'/></g>"));
    assertEquals(
        1, notes("<g font-variant='small-caps'><text font-variant='inherit'>a</text></g>").size());
  }

  /** Groups without properties (5.2) and foreign attributes (5.10) draw nothing. */
  @Property(tries = 100)
  void wrappingChangesNoNote(
      @ForAll("drawings") String inside, @ForAll("wraps") List<String> wrap) {
    String wrapped = inside;
    for (String w : wrap) {
      wrapped = w + wrapped + "</g>";
    }
    assertEquals(notes(inside), notes(wrapped));
  }

  @Provide
  Arbitrary<List<String>> wraps() {
    return Arbitraries.of(
            "<g>",
            "<g o:kind='layer' o:label='Front'>",
            "<g data-name='a' aria-hidden='true'>",
            "<g style='-inkscape-stroke:none'>",
            "<g tabindex='0' role='img'>",
            "<g><title>t</title><o:x sparkle='1'/>")
        .list()
        .ofMaxSize(4);
  }

  @Provide
  Arbitrary<String> drawings() {
    return Arbitraries.of(
            RECT + "filter='url(#a)'/>",
            RECT + "sparkle='1'/>",
            RECT + "/>",
            "<text id='t' letter-spacing='3'>a</text>",
            "<path id='p' style='mix-blend-mode:screen' d='M0 0h3'/>",
            "<g id='g' mask='url(#m)'><path transform='none'/></g><mask id='m' mask-type='alpha'/>")
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .map(all -> String.join("", new ArrayList<>(all)));
  }
}
