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
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Published rectangles that are known to be filled by, or to just hold, a set of smaller ones: no
 * gap, no labelled cell, every piece in one scale group. The largest common scale is exactly 1.
 *
 * @param name as published
 * @param request the question
 */
record RectangleOracle(String name, FitRequest request) {

  /** The nine squares that fill 33 x 32 (Moron 1925). */
  static RectangleOracle squaredRectangle() {
    return new RectangleOracle("33x32", request(33, 32, squares("moron_33x32_order9.csv")));
  }

  /** The 21 squares that fill 112 x 112 (Duijvestijn 1978). */
  static RectangleOracle squaredSquare() {
    return new RectangleOracle(
        "112x112", request(112, 112, squares("duijvestijn_112_order21.csv")));
  }

  /** The least rectangles for the squares 1 to N (Korf; Huang and Korf; OEIS A038666), N to 12. */
  static List<RectangleOracle> leastRectangles() {
    List<RectangleOracle> all = new ArrayList<>();
    for (double[] row : rows("consecutive_squares_min_rect.csv")) {
      List<double[]> sides = new ArrayList<>();
      for (int side = 1; side <= row[0]; side++) {
        sides.add(new double[] {side, side});
      }
      all.add(new RectangleOracle("squares 1 to " + (int) row[0], request(row[1], row[2], sides)));
    }
    return all;
  }

  /** Packings without waste (Hopper and Turton 2001, C1 and C2), pieces as they lie there. */
  static List<RectangleOracle> hopperTurton() {
    try (InputStream in = open("hopper_turton_c1_c2.json")) {
      List<RectangleOracle> all = new ArrayList<>();
      for (JsonNode node : new ObjectMapper().readTree(in)) {
        List<double[]> sides = new ArrayList<>();
        for (JsonNode p : node.get("pieces")) {
          sides.add(new double[] {p.get(0).asDouble(), p.get(1).asDouble()});
        }
        FitRequest request = request(node.get("W").asDouble(), node.get("H").asDouble(), sides);
        all.add(new RectangleOracle(node.get("name").asText(), request));
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<double[]> squares(String file) {
    List<double[]> sides = new ArrayList<>();
    for (double[] row : rows(file)) {
      sides.add(new double[] {row[2], row[2]});
    }
    return sides;
  }

  private static List<double[]> rows(String file) {
    try (InputStream in = open(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> List.of(line.split(",")).stream().mapToDouble(Double::parseDouble).toArray())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream open(String file) {
    return Objects.requireNonNull(
        RectangleOracle.class.getResourceAsStream("/reference/" + file), file);
  }

  private static FitRequest request(double width, double height, List<double[]> sides) {
    PaperSize paper = new PaperSize("oracle", Length.pt(width), Length.pt(height));
    Sheet sheet = Sheet.open("oracle", paper, Margins.all(Length.ZERO), List.of());
    List<Flat> flats = new ArrayList<>();
    for (double[] s : sides) {
      InkedBox ink = InkedBox.ofSize(s[0], s[1]);
      flats.add(Flat.of("piece " + flats.size(), Role.SWATCH, ink).withGroup("all", 1));
    }
    return FitRequest.of(sheet, flats, Spacing.NONE)
        .withRules(LeadRule.NONE)
        .withOrder(Order.NONE)
        .withGrowth(false);
  }

  @Override
  public String toString() {
    return name;
  }
}
