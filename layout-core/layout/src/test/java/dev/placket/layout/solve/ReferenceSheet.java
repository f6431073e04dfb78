package dev.placket.layout.solve;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** A reference sheet with what is known about it from outside. */
record ReferenceSheet(
    String id, FitRequest request, double bestKnown, double bound, boolean proven) {
  /** The usual sheets, then the hard ones. */
  static Stream<ReferenceSheet> both() {
    return Stream.of("pages.json", "pages-hard.json").flatMap(f -> all(f).stream());
  }

  static List<ReferenceSheet> all(String file) {
    try (InputStream in = ReferenceSheet.class.getResourceAsStream("/reference/" + file)) {
      List<ReferenceSheet> sheets = new ArrayList<>();
      for (JsonNode page : new ObjectMapper().readTree(Objects.requireNonNull(in, file))) {
        sheets.add(of(page));
      }
      return sheets;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  int flats() {
    return request.flats().size();
  }

  private static ReferenceSheet of(JsonNode page) {
    List<LabelledCell> cells = new ArrayList<>();
    for (JsonNode c : page.get("labelled")) {
      Rect box = new Rect(at(c, 0), at(c, 1), at(c, 2), at(c, 3));
      cells.add(new LabelledCell("cell" + cells.size(), box));
    }
    List<Flat> flats = new ArrayList<>();
    for (JsonNode f : page.get("flats")) {
      InkedBox ink = InkedBox.ofSize(at(f, 0), at(f, 1));
      flats.add(Flat.of("flat" + flats.size(), Role.SWATCH, ink).withGroup("all", 1));
    }
    Length width = Length.pt(page.get("width").asDouble());
    Length height = Length.pt(page.get("height").asDouble());
    Length margin = Length.pt(page.get("margin").asDouble());
    Length gap = Length.pt(page.get("gap").asDouble());
    Sheet sheet =
        Sheet.open(
            page.get("id").asText(),
            new PaperSize(page.get("page").asText(), width, height),
            Margins.all(margin),
            cells);
    FitRequest request =
        FitRequest.of(sheet, flats, Spacing.NONE.withGap(gap).withClearance(gap))
            .withRules(LeadRule.NONE)
            .withOrder(Order.NONE)
            .withGrowth(false);
    return new ReferenceSheet(
        page.get("id").asText(),
        request,
        page.get("bestKnown").asDouble(),
        page.get("bound").asDouble(),
        page.get("proven").asBoolean());
  }

  private static double at(JsonNode list, int index) {
    return list.get(index).asDouble();
  }

  @Override
  public String toString() {
    return id;
  }
}
