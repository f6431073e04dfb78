package dev.placket.packs.compose;

import dev.placket.packs.description.CellTable;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.table.Csv;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads the tables that a description names: CSV files and ranges of workbooks; slips are noted.
 *
 * @param described the description
 * @param files finds them
 * @param ranges reads workbooks
 */
record TableFile(Described described, FlatFiles files, RangeReader ranges) {
  private static final int MOST_BYTES = 5_000_000;

  /** The rows of a range of a workbook; empty where it cannot be read. */
  Optional<CellTable> range(String workbook, String range, String path) {
    TextPosition place = described.places().of(path);
    Path file = files.file(workbook, path);
    if (file == null) {
      return Optional.empty();
    }
    try {
      CellTable table = ranges.read(file, range);
      if (table.rows().isEmpty()) {
        String found = "the range '" + range + "' of " + workbook + " without a value";
        described.faults().add(place, found, "headings in its first row");
        return Optional.empty();
      }
      return Optional.of(table);
    } catch (Refusal e) {
      e.faults().forEach(fault -> described.faults().addOf(place, fault));
      return Optional.empty();
    }
  }

  /** The records of a file, one or more; empty where it cannot be read. */
  Optional<List<Csv.Row>> records(String csv, String path) {
    TextPosition place = described.places().of(path);
    Path file = files.file(csv, path);
    if (file == null) {
      return Optional.empty();
    }
    try {
      byte[] bytes = Files.readAllBytes(file);
      if (bytes.length > MOST_BYTES) {
        described.faults().add(place, csv + " of more than " + MOST_BYTES + " bytes", "fewer");
        return Optional.empty();
      }
      String read = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      List<Csv.Row> records = Csv.read(read);
      if (records.isEmpty()) {
        described.faults().add(place, csv + " without a line", "headings in the first line");
        return Optional.empty();
      }
      return Optional.of(records);
    } catch (Csv.CsvException e) {
      String found = csv + ", " + e.getMessage();
      described.faults().add(place, found, "comma-separated values (RFC 4180)");
    } catch (CharacterCodingException e) {
      described.faults().add(place, csv + ", which is not UTF-8", "a file saved in UTF-8");
    } catch (IOException e) {
      described.faults().add(place, csv + ", which cannot be read", "a readable file");
    }
    return Optional.empty();
  }
}
