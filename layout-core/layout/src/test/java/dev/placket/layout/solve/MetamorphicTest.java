package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What must not change the largest common scale: another unit, the page in a mirror or on its side,
 * another order of flats and cells. On the reference sheets, with all rules for front and order
 * off.
 */
class MetamorphicTest {
  private static final double CLOSE = 1e-6;

  static Stream<ReferenceSheet> sheets() {
    return ReferenceSheet.both().filter(s -> s.flats() <= 12);
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void anotherUnitOnlyScales(ReferenceSheet sheet) {
    double factor = 2.54;
    same(sheet.request(), factor, mapped(sheet.request(), factor, b -> grown(b, factor)));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void mirrorsChangeNothing(ReferenceSheet sheet) {
    PaperSize p = sheet.request().sheet().paper();
    double w = p.width().pt();
    double h = p.height().pt();
    same(
        sheet.request(),
        1,
        mapped(
            sheet.request(), 1, b -> new Rect(w - b.right(), b.top(), w - b.left(), b.bottom())));
    same(
        sheet.request(),
        1,
        mapped(
            sheet.request(), 1, b -> new Rect(b.left(), h - b.bottom(), b.right(), h - b.top())));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void onItsSideItIsTheSame(ReferenceSheet sheet) {
    FitRequest r = sheet.request();
    PaperSize p = r.sheet().paper();
    List<LabelledCell> cells = new ArrayList<>();
    for (LabelledCell c : r.sheet().labelledCells()) {
      Rect b = c.box();
      cells.add(new LabelledCell(c.name(), new Rect(b.top(), b.left(), b.bottom(), b.right())));
    }
    List<Flat> flats = new ArrayList<>();
    for (Flat f : r.flats()) {
      InkedBox ink = InkedBox.ofSize(f.ink().height(), f.ink().width());
      flats.add(Flat.of(f.id(), f.role(), ink).withGroup("all", 1));
    }
    PaperSize turned = new PaperSize(p.name(), p.height(), p.width());
    same(r, 1, request(turned, r.sheet().margins(), cells, flats, r.spacing()));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void theirOrderChangesNothing(ReferenceSheet sheet) {
    FitRequest r = sheet.request();
    List<LabelledCell> cells = new ArrayList<>(r.sheet().labelledCells());
    List<Flat> flats = new ArrayList<>(r.flats());
    Collections.shuffle(cells, new Random(7));
    Collections.shuffle(flats, new Random(7));
    same(r, 1, request(r.sheet().paper(), r.sheet().margins(), cells, flats, r.spacing()));
  }

  private static Rect grown(Rect b, double factor) {
    return new Rect(b.left() * factor, b.top() * factor, b.right() * factor, b.bottom() * factor);
  }

  private static FitRequest mapped(FitRequest r, double factor, UnaryOperator<Rect> map) {
    List<LabelledCell> cells = new ArrayList<>();
    for (LabelledCell c : r.sheet().labelledCells()) {
      cells.add(new LabelledCell(c.name(), map.apply(c.box())));
    }
    PaperSize p = r.sheet().paper();
    PaperSize paper =
        new PaperSize(
            p.name(), Length.pt(p.width().pt() * factor), Length.pt(p.height().pt() * factor));
    Margins margins = Margins.all(Length.pt(r.sheet().margins().top().pt() * factor));
    Length gap = Length.pt(r.spacing().gap().pt() * factor);
    return request(paper, margins, cells, r.flats(), Spacing.NONE.withGap(gap).withClearance(gap));
  }

  private static FitRequest request(
      PaperSize paper,
      Margins margins,
      List<LabelledCell> cells,
      List<Flat> flats,
      Spacing spacing) {
    return FitRequest.of(Sheet.open("changed", paper, margins, cells), flats, spacing)
        .withRules(LeadRule.NONE)
        .withOrder(Order.NONE)
        .withGrowth(false);
  }

  private static void same(FitRequest one, double factor, FitRequest other) {
    Proof a = assertInstanceOf(Fit.class, Fitter.fit(one)).proof();
    Proof b = assertInstanceOf(Fit.class, Fitter.fit(other)).proof();
    double scale = a.scale().doubleValue() * factor;
    double bound = a.bound() * factor;
    if (a.proven() && b.proven()) {
      assertEquals(scale, b.scale().doubleValue(), scale * CLOSE);
    }
    assertTrue(scale <= b.bound() * (1 + CLOSE), () -> scale + " above the other's " + b.bound());
    assertTrue(b.scale().doubleValue() <= bound * (1 + CLOSE), () -> b.scale() + " above " + bound);
  }
}
