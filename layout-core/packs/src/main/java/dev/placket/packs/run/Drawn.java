package dev.placket.packs.run;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.sheet.Rule;
import dev.placket.packs.compose.CheckBar;
import dev.placket.packs.flats.LineWeight;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.page.Art;
import dev.placket.packs.page.Inked;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.RasterPrint;
import dev.placket.packs.placed.SwatchFrame;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PdfDrawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Turns placed flats into what is drawn on a page.
 *
 * @param lettering the typefaces of the pack
 * @param phrases its languages
 */
record Drawn(Lettering lettering, Phrases phrases) {
  /** A flat with the lines of its frame, if it has one. */
  Inked inked(PlacedFlat flat, List<Rule> frame) {
    List<Rule> marks = new ArrayList<>(SwatchFrame.of(flat, flat.ink().toBox()));
    marks.addAll(frame);
    List<TextRun> caption =
        flat.item().caption().under(flat.stand(), flat.garmentScale(), lettering);
    return new Inked(
        art(flat),
        flat.drawn(),
        alternative(flat),
        caption,
        marks,
        flat.callouts(),
        flat.dimensions());
  }

  /** The same with the bar by which a print at true size is checked. */
  Inked checked(PlacedFlat flat, List<Rule> frame) {
    Inked plain = inked(flat, frame);
    List<TextRun> lines = new ArrayList<>(plain.caption());
    lines.addAll(CheckBar.text(flat.stand(), flat.item().caption(), phrases, lettering));
    return new Inked(
        plain.art(),
        plain.ink(),
        plain.alternative(),
        lines,
        Stream.concat(
                plain.marks().stream(),
                CheckBar.rules(flat.stand(), flat.item().caption(), lettering).stream())
            .toList(),
        plain.callouts(),
        plain.dimensions());
  }

  private static Art art(PlacedFlat flat) {
    RasterPrint raster = flat.raster();
    if (raster != null) {
      return new Art.Pixels(raster.image(), raster.jpeg());
    }
    Drawing drawing = Objects.requireNonNull(flat.drawing());
    if (drawing instanceof PdfDrawing page) {
      return new Art.PdfPart(page, flat.flat().ink(), flat.placement().scale().doubleValue());
    }
    double scale = flat.placement().scale().doubleValue();
    return new Art.Paths(drawing::paint, part(flat, scale), scale);
  }

  /** The part of a drawing that is drawn, in drawing units. */
  private static InkedBox part(PlacedFlat flat, double scale) {
    InkedBox ink = flat.flat().ink();
    LineWeight weight = flat.item().weight();
    double over = weight == null ? 0 : weight.overhang().pt() / scale;
    return new InkedBox(
        ink.left() - over, ink.top() - over, ink.right() + over, ink.bottom() + over);
  }

  private String alternative(PlacedFlat flat) {
    StockPhrase kind = flat.raster() == null ? StockPhrase.LINE_DRAWING : StockPhrase.PICTURE;
    return flat.called(LanguageMarks.without(phrases.beside(kind)));
  }
}
