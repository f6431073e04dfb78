package dev.placket.layout.properties;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A request with every length on the sheet multiplied. A greatest size that a density limits grows
 * likewise, as that limit falls inversely; drawings keep their units.
 *
 * @param by the factor
 */
record Scaled(double by) {
  FitRequest of(FitRequest request) {
    Spacing s = request.spacing();
    return new FitRequest(
        of(request.sheet()),
        request.flats().stream().map(this::of).toList(),
        Spacing.NONE.withGap(s.gap().times(by)).withClearance(s.clearance().times(by)),
        request.rules(),
        request.order(),
        request.growth(),
        request.budget());
  }

  private Sheet of(Sheet s) {
    PaperSize p = s.paper();
    Margins m = s.margins();
    return new Sheet(
        s.name(),
        new PaperSize(p.name(), p.width().times(by), p.height().times(by)),
        new Margins(
            m.top().times(by), m.right().times(by), m.bottom().times(by), m.left().times(by)),
        new GridLines(all(s.lines().columns()), all(s.lines().rows())),
        s.windows(),
        s.labelledCells().stream().map(c -> new LabelledCell(c.name(), of(c.box()))).toList(),
        s.rules().stream().map(r -> new Rule(of(r.axis()), r.width().times(by))).toList());
  }

  private Flat of(Flat f) {
    Surround s = f.surround();
    Limits l = f.limits();
    Held h = f.held();
    Double scale = h.scale();
    return f.withSurround(
            new Surround(
                s.left().times(by),
                s.top().times(by),
                s.right().times(by),
                s.bottom().times(by),
                s.leastWidth().times(by)))
        .withLimits(new Limits(l.least().times(by), of(l.greatest())))
        .withHeld(new Held(of(h.left()), of(h.top()), scale == null ? null : scale * by));
  }

  private @Nullable Length of(@Nullable Length length) {
    return length == null ? null : length.times(by);
  }

  private Rect of(Rect b) {
    return new Rect(b.left() * by, b.top() * by, b.right() * by, b.bottom() * by);
  }

  private List<Double> all(List<Double> lines) {
    return lines.stream().map(x -> x * by).toList();
  }
}
