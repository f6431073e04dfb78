package dev.placket.demo.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A small pack in a folder, to be changed by tests. */
public final class ExamplePack {
  private static final String DRAWING =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120' fill='none' stroke='#000'>"
          + "<path id='body' d='M10,10 H90 V110 H10 Z' fill='#fff' stroke-width='4'/>"
          + "<g id='seams' stroke-width='2'><path id='waist' d='M12,60 H88'/></g></svg>";

  /** The description. */
  public static final String TEXT =
      """
      format: placket-pack/1
      fields:
        label: Mossgantry
        style-number: MG-3107
        sample-size: M
      header:
        columns: [2fr, 1fr]
        rows: [10mm]
        areas:
          - style sheet
        cells:
          style: {caption: Style no., text: "{style-number}"}
          sheet: {caption: Sheet, text: "{sheet} of {sheets}"}
      foot:
        rows: [8mm]
        areas:
          - caution
        cells:
          caution: {text: Do not take measurements from the drawings., size: 1.8mm}
      sheets:
        flats:
          name: Flat sheet
          columns: [2fr, 1fr]
          rows: [1fr, 30mm]
          areas:
            - views details
            - views note
          cells:
            note: {caption: Note, text: "Buttons tacked\\nthrough the facing"}
          windows:
            views:
              corners:
                - {at: bottom-right, width: 40mm, height: 9mm, caption: Closing, text: left over right}
            details:
          flats:
            front: {file: front.svg, role: front, window: views, unit: 10mm}
            back: {file: back.svg, role: back, window: views, unit: 10mm}
            pocket: {file: pocket.svg, role: detail, window: details, caption: Pocket, note: bar tacks 10}
        measures:
          name: Measurements
          areas:
            - points
          tables:
            points: {csv: points.csv, sample: "{sample-size}"}
        materials:
          name: Materials
          areas:
            - list
          tables:
            list:
              columns: [{heading: Swatch, windows: true}, Material, Place]
              rows:
                - [cloth, Twill, body]
                - ["", Lining, half-lining]
          flats:
            cloth: {file: pocket.svg, role: swatch}
      """;

  /** The measured table. */
  public static final String POINTS =
      """
      Point,Measured,S,M,L,±
      A,half chest,57,59.5,62,±1
      D,back,99.5,101,102.5,±1
      H,half cuff,14.4,14.8,15.2,±0.3
      """;

  private ExamplePack() {}

  /** Writes the pack into a folder. */
  public static Path write(Path folder, String text) throws IOException {
    for (String name : List.of("front.svg", "back.svg", "pocket.svg")) {
      Files.writeString(folder.resolve(name), DRAWING);
    }
    Files.writeString(folder.resolve("points.csv"), POINTS);
    return Files.writeString(folder.resolve("pack.yaml"), text);
  }
}
