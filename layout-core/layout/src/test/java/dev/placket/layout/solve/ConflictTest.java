package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.ConflictText;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.fit.Requirement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.solve.conflict.Demands;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Why nothing fits, on a sheet worked out by hand and on seeded sheets that cannot hold. */
class ConflictTest {
  /** {@code mvn verify} takes a hundred; {@code -Dplacket.conflicts=1000} asks for more. */
  private static final int SEEDED = Integer.getInteger("placket.conflicts", 100);

  /** A strip 300 by 100 with notes 60 wide at its right end. */
  private static FitRequest strip(Flat... flats) {
    Sheet sheet =
        Sheet.open(
            "strip",
            new PaperSize("strip", Length.pt(320), Length.pt(120)),
            Margins.all(Length.pt(10)),
            List.of(new LabelledCell("notes", new Rect(250, 10, 310, 110))));
    return FitRequest.of(
            sheet, List.of(flats), Spacing.NONE.withGap(Length.pt(10)).withClearance(Length.pt(5)))
        .withRules(LeadRule.NONE);
  }

  private static Flat least(String id, double size) {
    return Flat.of(id, Role.STEP, InkedBox.ofSize(100, 100))
        .withShare(1)
        .withLimits(new Limits(Length.pt(size), null));
  }

  @Test
  void aDesignerIsToldWhatWouldHelp() {
    // 90 + 10 + 90 + 10 + 60 = 260 of 240 - 5: it lacks 25 points.
    FitRequest request = strip(least("front", 90), least("back", 90), least("detail 5", 60));
    Conflict conflict = assertInstanceOf(Conflict.class, Fitter.fit(request));
    assertTrue(conflict.proven() && conflict.provenMinimal());
    assertRelief(conflict, Relief.Kind.SHORTEN_CELL, "notes", 25);
    assertRelief(conflict, Relief.Kind.LOWER_LEAST_SIZE, "detail 5", 25);
    assertFalse(
        conflict.reliefs().stream().anyMatch(r -> r.kind() == Relief.Kind.LOWER_CLEARANCE),
        "five points of clearance are not enough");
    String said = ConflictText.of(conflict, id -> id);
    // 25 points are 8.82 mm.
    assertTrue(said.startsWith("There is no room for detail 5 beside front and back: "), said);
    assertTrue(said.contains("make the notes 8.9 mm narrower"), said);
    assertTrue(said.endsWith("leave out front, back or detail 5."), said);
  }

  private static void assertRelief(Conflict c, Relief.Kind kind, String of, double amount) {
    Relief found =
        c.reliefs().stream()
            .filter(r -> r.kind() == kind && r.of().equals(of))
            .findFirst()
            .orElseThrow(() -> new AssertionError(kind + " of " + of + " in " + c.reliefs()));
    // Found from above, to a part in four thousand of the most there is.
    assertEquals(amount, found.amount(), 100 / 4096.0);
    assertTrue(found.amount() >= amount - 1e-6, () -> "not enough: " + found);
  }

  @Test
  void onSeededSheetsEveryReliefCuresAndNineTenthsOfItDoesNot() {
    int conflicts = 0;
    for (long seed = 1; conflicts < SEEDED; seed++) {
      FitRequest request = seeded(new Random(seed));
      if (Fitter.fit(request) instanceof Conflict conflict) {
        conflicts++;
        check(request, conflict, "seed " + seed);
      }
    }
  }

  private static void check(FitRequest request, Conflict conflict, String place) {
    assertFalse(conflict.requirements().isEmpty(), place);
    if (conflict.provenMinimal()) {
      assertFalse(fits(Demands.only(request, conflict.requirements())), place);
      for (Requirement one : conflict.requirements()) {
        List<Requirement> rest = new ArrayList<>(conflict.requirements());
        rest.remove(one);
        assertTrue(Demands.empty(rest) || fits(Demands.only(request, rest)), place + one);
      }
    }
    for (Relief relief : conflict.reliefs()) {
      assertTrue(relief.amount() > 0, place + relief);
      assertTrue(fits(ReliefApplied.to(request, relief, 1)), place + relief);
      if (relief.unit() == Relief.Unit.POINT || relief.unit() == Relief.Unit.RATIO) {
        assertFalse(fits(ReliefApplied.to(request, relief, 0.9)), place + relief);
      }
    }
  }

  private static boolean fits(FitRequest request) {
    FitRequest plain = request.withOrder(Order.NONE).withGrowth(false);
    return Fitter.solve(plain, () -> false, true) instanceof Fit;
  }

  /** One to five flats whose least sizes ask for about as much as there is. */
  private static FitRequest seeded(Random random) {
    int n = 1 + random.nextInt(5);
    List<LabelledCell> cells = new ArrayList<>();
    for (int c = 0; c < random.nextInt(3); c++) {
      double left = 10 + random.nextInt(250);
      double top = 10 + random.nextInt(150);
      Rect box = new Rect(left, top, left + 20 + random.nextInt(60), top + 20 + random.nextInt(50));
      cells.add(new LabelledCell("cell " + c, box));
    }
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      InkedBox ink = InkedBox.ofSize(20 + random.nextInt(80), 20 + random.nextInt(80));
      double least = (0.5 + random.nextDouble() / 2) * 270 / Math.sqrt(n);
      Role role = i == 0 ? Role.FRONT : i == 1 ? Role.BACK : Role.DETAIL;
      Flat flat = Flat.of("flat " + i, role, ink);
      flat = random.nextInt(4) > 0 || i > 1 ? flat : flat.withGroup("views", i == 0 ? 1 : 0.85);
      flats.add(flat.withLimits(new Limits(Length.pt(least), null)));
    }
    Sheet sheet =
        Sheet.open(
            "seeded",
            new PaperSize("seeded", Length.pt(360), Length.pt(260)),
            Margins.all(Length.pt(10)),
            cells);
    FitRequest request =
        FitRequest.of(sheet, flats, Spacing.NONE.withGap(Length.pt(8)).withClearance(Length.pt(4)));
    request = random.nextBoolean() ? request : request.withRules(LeadRule.NONE);
    return random.nextInt(3) > 0 ? request : request.withFlats(held(flats, random));
  }

  /** One of them held in part: by an edge, by both, or also at a scale. */
  private static List<Flat> held(List<Flat> flats, Random random) {
    int which = random.nextInt(flats.size());
    Flat flat = flats.get(which);
    int parts = 1 + random.nextInt(7);
    double least = flat.limits().least().pt() / flat.ink().longestSide();
    Held held =
        new Held(
            (parts & 1) > 0 ? Length.pt(14 + random.nextInt(150)) : null,
            (parts & 2) > 0 ? Length.pt(14 + random.nextInt(100)) : null,
            (parts & 4) > 0 ? least * (1 + random.nextInt(3) / 10.0) : null);
    List<Flat> some = new ArrayList<>(flats);
    some.set(which, flat.withHeld(held));
    return some;
  }

  /**
   * A ruled sheet: a header of three cells over a window and notes to its right. The window's left
   * line is also the line between the first two cells of the header.
   */
  private static Sheet ruled(double left) {
    List<LabelledCell> cells =
        List.of(
            new LabelledCell("style", new Rect(10, 10, left, 30)),
            new LabelledCell("season", new Rect(left, 10, 150, 30)),
            new LabelledCell("sheet", new Rect(150, 10, 310, 30)),
            new LabelledCell("notes", new Rect(250, 30, 310, 130)));
    GridLines lines = new GridLines(List.of(10.0, left, 150.0, 250.0, 310.0), List.of(30.0, 130.0));
    return new Sheet(
        "ruled",
        new PaperSize("ruled", Length.pt(320), Length.pt(140)),
        Margins.all(Length.pt(10)),
        lines,
        List.of(new SheetWindow("window", new GridArea(1, 0, 3, 1))),
        cells,
        List.of());
  }

  @Test
  void onARuledSheetTheCellBesideTheWindowGivesWay() {
    // 90 + 10 + 90 + 10 + 60 = 260 of 240, where the window begins at 10.
    FitRequest request =
        FitRequest.of(
                ruled(10.0),
                List.of(least("front", 90), least("back", 90), least("detail 5", 60)),
                Spacing.NONE.withGap(Length.pt(10)).withClearance(Length.pt(0)))
            .withRules(LeadRule.NONE);
    Conflict conflict = assertInstanceOf(Conflict.class, Fitter.fit(request));
    assertRelief(conflict, Relief.Kind.SHORTEN_CELL, "notes", 20);
  }

  @Test
  void aLineIsNotMovedForACellOfTheHeader() {
    // One of 150 in a window of 150 by 100: 50 more in height, which only least size can give.
    FitRequest request =
        FitRequest.of(
                ruled(100.0), List.of(least("front", 150)), Spacing.NONE.withGap(Length.pt(10)))
            .withRules(LeadRule.NONE);
    Conflict conflict = assertInstanceOf(Conflict.class, Fitter.fit(request));
    assertRelief(conflict, Relief.Kind.LOWER_LEAST_SIZE, "front", 50);
    assertEquals(1, conflict.reliefs().size(), conflict.reliefs().toString());
  }
}
