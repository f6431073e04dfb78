package dev.placket.benchmarks.order;

import dev.placket.benchmarks.pages.PageException;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Sheets of garments: front, back and four to ten invented details on A4 with header and notes. */
public final class GarmentSheets {
  private GarmentSheets() {}

  /**
   * Garments whose drawings are listed in a folder.
   *
   * @param folder with a {@code manifest.csv}: columns design, view, ink_x, ink_y, ink_w, ink_h
   */
  public static List<FitRequest> in(Path folder) {
    Map<String, Map<String, InkedBox>> garments = new TreeMap<>();
    try {
      List<String> lines = Files.readAllLines(folder.resolve("manifest.csv"));
      List<String> head = List.of(lines.get(0).split(","));
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split(",");
        garments
            .computeIfAbsent(cells[head.indexOf("design")], d -> new TreeMap<>())
            .put(cells[head.indexOf("view")], ink(head, cells));
      }
    } catch (IOException e) {
      throw new PageException(folder + " has no manifest.csv that can be read: " + e.getMessage());
    }
    List<FitRequest> requests = new ArrayList<>();
    garments.forEach(
        (name, views) -> {
          InkedBox front = views.get("front");
          InkedBox back = views.get("back");
          if (front != null && back != null) {
            requests.add(request(name, front, back, requests.size()));
          }
        });
    return requests;
  }

  private static InkedBox ink(List<String> head, String[] cells) {
    double x = Double.parseDouble(cells[head.indexOf("ink_x")]);
    double y = Double.parseDouble(cells[head.indexOf("ink_y")]);
    double width = Double.parseDouble(cells[head.indexOf("ink_w")]);
    return new InkedBox(x, y, x + width, y + Double.parseDouble(cells[head.indexOf("ink_h")]));
  }

  /** So many garments of invented sizes. */
  public static List<FitRequest> invented(int count) {
    List<FitRequest> requests = new ArrayList<>();
    Random random = new Random(7);
    for (int i = 0; i < count; i++) {
      InkedBox front = InkedBox.ofSize(60 + random.nextInt(60), 100);
      InkedBox back = InkedBox.ofSize(front.width(), 97 + random.nextInt(6));
      requests.add(request("garment " + (i + 1), front, back, i));
    }
    return requests;
  }

  /** What many flats are. */
  public enum Kind {
    /** Swatches of one size. */
    EQUAL_SWATCHES,
    /** Details of many sizes. */
    DETAILS,
    /** Front, back and details of many sizes. */
    VIEWS_AND_DETAILS
  }

  /**
   * Many flats on A4 without labelled cells, with the order of a folder's sheet.
   *
   * @param count how many, 3 or more
   */
  public static FitRequest many(Kind kind, int count) {
    Random random = new Random(5);
    Surround caption = Surround.caption(Length.pt(12), Length.pt(20));
    List<Flat> flats = new ArrayList<>();
    if (kind == Kind.VIEWS_AND_DETAILS) {
      InkedBox view = InkedBox.ofSize(200, 260);
      flats.add(Flat.of("front", Role.FRONT, view).withGroup("views", 1));
      flats.add(Flat.of("back", Role.BACK, view).withGroup("views", 0.85));
    }
    while (flats.size() < count) {
      boolean equal = kind == Kind.EQUAL_SWATCHES;
      InkedBox ink =
          equal
              ? InkedBox.ofSize(40, 30)
              : InkedBox.ofSize(30 + random.nextInt(60), 30 + random.nextInt(60));
      flats.add(
          Flat.of("flat " + flats.size(), equal ? Role.SWATCH : Role.DETAIL, ink)
              .withSurround(caption));
    }
    Sheet sheet =
        Sheet.open(
            count + " flats", PaperSize.A4.landscape(), Margins.all(Length.mm(10)), List.of());
    return FitRequest.of(
            sheet, flats, Spacing.NONE.withGap(Length.mm(5)).withClearance(Length.mm(3)))
        .withOrder(Order.PARTED);
  }

  private static FitRequest request(String name, InkedBox front, InkedBox back, int number) {
    Random random = new Random(100 + number);
    Surround caption = Surround.caption(Length.mm(7), Length.mm(22));
    List<Flat> flats = new ArrayList<>();
    flats.add(Flat.of("front", Role.FRONT, front).withGroup("views", 1).withSurround(caption));
    flats.add(Flat.of("back", Role.BACK, back).withGroup("views", 0.85).withSurround(caption));
    int details = 4 + number % 7;
    for (int d = 0; d < details; d++) {
      InkedBox ink = InkedBox.ofSize(40 + random.nextInt(60), 40 + random.nextInt(60));
      flats.add(
          Flat.of("detail " + (d + 1), Role.DETAIL, ink)
              .withSurround(caption)
              .withLimits(new Limits(Length.mm(15), null)));
    }
    List<LabelledCell> cells = new ArrayList<>();
    cells.add(new LabelledCell("header", new Rect(28.35, 28.35, 813.54, 85)));
    if (number % 2 == 1) {
      cells.add(new LabelledCell("notes", new Rect(680, 440, 813.54, 566.93)));
    }
    Sheet sheet = Sheet.open(name, PaperSize.A4.landscape(), Margins.all(Length.mm(10)), cells);
    return FitRequest.of(
        sheet, flats, Spacing.NONE.withGap(Length.mm(5)).withClearance(Length.mm(3)));
  }
}
