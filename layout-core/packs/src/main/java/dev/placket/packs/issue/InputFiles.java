package dev.placket.packs.issue;

import dev.placket.packs.compose.SamplePhotographs;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackBand;
import dev.placket.packs.description.PackCell;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackMeasurements;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The files that a pack is made from, with their digests. */
final class InputFiles {
  private final Described described;
  private final Map<String, String> digests = new TreeMap<>();

  private InputFiles(Described described) {
    this.described = described;
  }

  /**
   * SHA-256 of the description and of each file that it names, by its path beside it.
   *
   * @param ranges reads ranges of workbooks
   * @throws Refusal if one cannot be read
   */
  static Map<String, String> digests(Described described, RangeReader ranges) throws Refusal {
    InputFiles all = new InputFiles(described);
    Pack pack = described.pack();
    all.add(String.valueOf(described.file().getFileName()));
    all.add(pack.glossary());
    for (String font : pack.fonts()) {
      all.add(font);
    }
    PackMeasurements measures = pack.measurements();
    if (measures != null) {
      all.add(measures.csv());
      all.add(measures.workbook());
    }
    PackSamples samples = pack.samples();
    if (samples != null) {
      for (PackSamples.Source source : samples.files()) {
        all.add(source.file());
      }
      for (String photograph : SamplePhotographs.files(described, ranges)) {
        all.add(photograph);
      }
    }
    for (PackBand band : new PackBand[] {pack.header(), pack.foot()}) {
      all.addPictures(band == null ? Map.of() : band.cells());
    }
    for (PackSheet sheet : pack.sheets().values()) {
      all.addPictures(sheet.cells());
      for (PackTable table : sheet.tables().values()) {
        all.add(table.csv());
      }
      for (PackFlat flat : sheet.flats().values()) {
        all.add(all.file(flat.file()));
      }
    }
    return all.digests;
  }

  private void addPictures(Map<String, PackCell> cells) throws Refusal {
    for (PackCell cell : cells.values()) {
      String picture = cell.picture();
      add(picture == null ? null : file(picture));
    }
  }

  /** Without the part of a file that is named behind a number sign. */
  private String file(String name) {
    int mark = name.lastIndexOf('#');
    boolean whole = mark <= 0 || Files.isRegularFile(described.folder().resolve(name));
    return whole ? name : name.substring(0, mark);
  }

  private void add(@Nullable String name) throws Refusal {
    if (name == null || name.isEmpty() || digests.containsKey(name)) {
      return;
    }
    Path file = described.folder().resolve(name);
    try {
      digests.put(name.replace('\\', '/'), digest(Files.readAllBytes(file)));
    } catch (IOException e) {
      throw Refusal.input(
          Fault.unreadable(file, "cannot be read again")
              .remedy("check that it exists and is readable"));
    }
  }

  static String digest(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
