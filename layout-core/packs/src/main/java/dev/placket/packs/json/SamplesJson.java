package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.sample.CheckFacts;
import dev.placket.packs.sample.JudgedPoint;
import dev.placket.packs.sample.JudgedSample;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.sample.SampleComment;
import dev.placket.packs.sample.Verdict;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Judged samples as fields of {@code fit.json}: exact values in the unit of the list. */
final class SamplesJson {
  private final JsonGenerator json;
  private final MeasureList list;

  private SamplesJson(JsonGenerator json, MeasureList list) {
    this.json = json;
    this.list = list;
  }

  static void write(JsonGenerator json, MeasureList list, List<SampleCheck> checks)
      throws IOException {
    SamplesJson samples = new SamplesJson(json, list);
    json.writeArrayFieldStart("samples");
    for (SampleCheck check : checks) {
      samples.check(check);
    }
    json.writeEndArray();
  }

  private void check(SampleCheck check) throws IOException {
    CheckFacts facts = check.facts();
    json.writeStartObject();
    json.writeStringField("sample", check.name());
    json.writeStringField("stage", facts.stage());
    json.writeStringField("round", facts.round());
    json.writeStringField("colour", facts.colour());
    json.writeStringField("received", facts.received());
    json.writeStringField("measured", facts.measured());
    json.writeStringField("wash", word(facts.wash()));
    json.writeStringField("substitutions", facts.substitutions());
    json.writeStringField("verdict", word(facts.verdict()));
    json.writeStringField("by", facts.by());
    json.writeArrayFieldStart("sizes");
    for (JudgedSample size : check.sizes()) {
      size(size);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("comments");
    for (SampleComment comment : check.comments()) {
      comment(comment);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void size(JudgedSample size) throws IOException {
    json.writeStartObject();
    json.writeStringField("size", size.size());
    json.writeNumberField("within", size.count(Verdict.WITHIN));
    json.writeNumberField("out", size.out());
    json.writeNumberField("noTolerance", size.count(Verdict.NO_TOLERANCE));
    json.writeNumberField("notMeasured", size.count(Verdict.NOT_MEASURED));
    json.writeArrayFieldStart("points");
    for (JudgedPoint point : size.points()) {
      point(point);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void point(JudgedPoint point) throws IOException {
    json.writeStartObject();
    json.writeStringField("point", point.value().code());
    number("asked", point.asked().value());
    number("plus", point.asked().plus());
    number("minus", point.asked().minus());
    number("factory", point.value().factory());
    number("ours", point.value().ours());
    number("difference", point.difference());
    json.writeStringField("shown", point.differenceText(list.shown().get(0)));
    json.writeStringField("verdict", word(point.verdict()));
    json.writeStringField("trend", word(point.trend()));
    number("revised", point.value().revised());
    json.writeStringField("decision", point.value().decision());
    json.writeStringField("comment", point.value().comment());
    json.writeEndObject();
  }

  private void comment(SampleComment comment) throws IOException {
    json.writeStartObject();
    json.writeNumberField("number", comment.number());
    json.writeStringField("since", comment.since());
    json.writeStringField("point", comment.point());
    json.writeStringField("size", comment.size());
    json.writeStringField("text", comment.text());
    json.writeStringField("action", comment.action());
    json.writeBooleanField("open", comment.open());
    json.writeBooleanField("carried", comment.carried());
    json.writeEndObject();
  }

  private static String word(@Nullable Enum<?> constant) {
    return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void number(String name, @Nullable BigDecimal mm) throws IOException {
    if (mm == null) {
      json.writeNullField(name);
    } else {
      json.writeNumberField(name, list.inUnit(mm));
    }
  }
}
