package consumer;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.util.List;

/** Puts a front and a back on A4 and says how large. */
public final class Program {
  private Program() {}

  /** The scale of the front in points per drawing unit. */
  public static double scale() {
    Length edge = Length.mm(10);
    Sheet sheet = Sheet.open("one", PaperSize.A4, Margins.all(edge), List.of());
    InkedBox ink = InkedBox.ofSize(100, 200);
    Flat front = Flat.of("front", Role.FRONT, ink).withGroup("body", 1);
    Flat back = Flat.of("back", Role.BACK, ink).withGroup("body", 1);
    FitRequest request = FitRequest.of(sheet, List.of(front, back), Spacing.NONE.withGap(edge).withClearance(edge));
    if (Planner.plan(request) instanceof Fit fit) {
      return fit.placement("front").scale().doubleValue();
    }
    throw new IllegalStateException("no fit");
  }
}
