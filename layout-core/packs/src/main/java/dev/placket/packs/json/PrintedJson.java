package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.layout.units.Length;
import dev.placket.packs.report.Numbers;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.base.PrintedDetail;
import java.io.IOException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Writes how fine a picture prints, in points. */
final class PrintedJson {
  private PrintedJson() {}

  static void write(JsonGenerator json, PrintedDetail printed, PrintLimits limits)
      throws IOException {
    json.writeObjectFieldStart("printed");
    length(json, "line", printed.line());
    length(json, "lettering", printed.lettering());
    length(json, "gap", printed.gap());
    json.writeArrayFieldStart("tooFine");
    for (PrintedDetail.Warning w : printed.under(limits)) {
      json.writeString(w.kind().name().toLowerCase(Locale.ROOT));
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void length(JsonGenerator json, String field, @Nullable Length length)
      throws IOException {
    if (length == null) {
      json.writeNullField(field);
    } else {
      json.writeNumberField(field, Numbers.rounded(length.pt(), Numbers.DECIMALS));
    }
  }
}
