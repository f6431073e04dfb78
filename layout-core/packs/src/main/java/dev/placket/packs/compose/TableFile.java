package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.TextPosition;
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
 * Reads the CSV files of a description; slips are noted.
 *
 * @param described the description
 * @param files finds them
 */
record TableFile(Described described, FlatFiles files) {
  private static final int MOST_BYTES = 5_000_000;

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
