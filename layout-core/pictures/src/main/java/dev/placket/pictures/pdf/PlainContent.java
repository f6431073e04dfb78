package dev.placket.pictures.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.contentstream.PDContentStream;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jspecify.annotations.Nullable;

/**
 * Pages brought into a form that can stand inside another document: hidden layers removed, marked
 * content and references to the structure of the source left out. What has none of these keeps its
 * streams, and forms that pages share stay shared.
 */
final class PlainContent {
  private static final Set<String> PAINTS = Set.of("f", "F", "f*", "B", "B*", "b", "b*", "S", "s");
  private static final Set<String> TEXTS = Set.of("Tj", "TJ", "'", "\"");
  private static final Set<String> PICTURES = Set.of("Do", "sh", "BI");

  /** Text that neither fills nor strokes (9.3.6), which moves on all the same. */
  private static final int INVISIBLE = 3;

  private static final COSName PROPERTIES = COSName.PROPERTIES;
  private static final COSName PATTERN = COSName.PATTERN;

  /** What ties a form or an image to the document that it stands in. */
  private static final List<COSName> TIES =
      List.of(
          COSName.OC,
          COSName.METADATA,
          COSName.getPDFName("PieceInfo"),
          COSName.getPDFName("LastModified"),
          COSName.getPDFName("StructParent"),
          COSName.STRUCT_PARENTS);

  private static final int DEEPEST = 40;

  private final OptionalContent layers;
  private final Map<COSStream, COSStream> done = new IdentityHashMap<>();

  PlainContent(OptionalContent layers) {
    this.layers = layers;
  }

  /**
   * A page that draws the same, apart from hidden layers.
   *
   * @throws IOException if its content cannot be read
   */
  PDPage of(PDPage page) throws IOException {
    COSDictionary plain = new COSDictionary();
    plain.setItem(COSName.TYPE, COSName.PAGE);
    plain.setItem(COSName.MEDIA_BOX, page.getMediaBox());
    plain.setItem(COSName.CROP_BOX, page.getCropBox());
    plain.setInt(COSName.ROTATE, page.getRotation());
    COSBase group = page.getCOSObject().getDictionaryObject(COSName.GROUP);
    if (group != null) {
      plain.setItem(COSName.GROUP, group);
    }
    COSDictionary resources =
        page.getResources() == null ? new COSDictionary() : page.getResources().getCOSObject();
    COSStream content = content(page, resources);
    if (content != null) {
      plain.setItem(COSName.CONTENTS, content);
    } else {
      plain.setItem(COSName.CONTENTS, page.getCOSObject().getDictionaryObject(COSName.CONTENTS));
    }
    plain.setItem(COSName.RESOURCES, resources(resources, 0));
    return new PDPage(plain);
  }

  /** The resources with forms, images and patterns that are plain; the same if all are. */
  private COSDictionary resources(COSDictionary from, int depth) throws IOException {
    if (depth > DEEPEST) {
      throw new IOException("forms lie more than " + DEEPEST + " deep inside one another");
    }
    COSDictionary copy = new COSDictionary(from);
    boolean changed = from.containsKey(PROPERTIES);
    copy.removeItem(PROPERTIES);
    for (COSName kind : List.of(COSName.XOBJECT, PATTERN)) {
      COSDictionary all = from.getCOSDictionary(kind);
      COSDictionary plain = all == null ? null : streams(all, from, depth);
      if (plain != null && plain != all) {
        copy.setItem(kind, plain);
        changed = true;
      }
    }
    return changed ? copy : from;
  }

  private COSDictionary streams(COSDictionary all, COSDictionary around, int depth)
      throws IOException {
    COSDictionary copy = new COSDictionary(all);
    boolean changed = false;
    for (COSName name : all.keySet()) {
      if (all.getDictionaryObject(name) instanceof COSStream stream) {
        COSStream plain = plain(stream, around, depth);
        if (plain != stream) {
          copy.setItem(name, plain);
          changed = true;
        }
      }
    }
    return changed ? copy : all;
  }

  private COSStream plain(COSStream stream, COSDictionary around, int depth) throws IOException {
    COSStream known = done.get(stream);
    if (known != null) {
      return known;
    }
    // A form that holds itself is refused when it is drawn; here it must end.
    done.put(stream, stream);
    boolean tied = TIES.stream().anyMatch(stream::containsKey);
    COSStream plain = stream;
    if (isForm(stream)) {
      COSDictionary its = stream.getCOSDictionary(COSName.RESOURCES);
      COSDictionary resources = its == null ? null : resources(its, depth + 1);
      // Without resources of its own it has those of its page (7.8.3), the names of layers, too.
      COSStream content = content(new PDFormXObject(stream), its == null ? around : its);
      if (content != null || tied || resources != its) {
        plain = copied(stream, content);
        if (resources != null) {
          plain.setItem(COSName.RESOURCES, resources);
        }
      }
    } else if (tied) {
      plain = copied(stream, null);
    }
    done.put(stream, plain);
    return plain;
  }

  private static boolean isForm(COSStream stream) {
    return COSName.FORM.equals(stream.getCOSName(COSName.SUBTYPE))
        || stream.getInt(COSName.PATTERN_TYPE, 0) == 1;
  }

  private static COSStream copied(COSStream stream, @Nullable COSStream content)
      throws IOException {
    COSStream copy = content == null ? new COSStream() : content;
    for (Map.Entry<COSName, COSBase> entry : stream.entrySet()) {
      boolean stays = content == null || !isEncoding(entry.getKey());
      if (stays && !COSName.LENGTH.equals(entry.getKey()) && !TIES.contains(entry.getKey())) {
        copy.setItem(entry.getKey(), entry.getValue());
      }
    }
    if (content == null) {
      try (InputStream in = stream.createRawInputStream();
          OutputStream out = copy.createRawOutputStream()) {
        in.transferTo(out);
      }
    }
    return copy;
  }

  private static boolean isEncoding(COSName key) {
    return COSName.FILTER.equals(key) || COSName.DECODE_PARMS.equals(key);
  }

  /** The content rewritten; null where it is plain already. */
  private @Nullable COSStream content(PDContentStream content, COSDictionary resources)
      throws IOException {
    COSStream plain = new COSStream();
    boolean changed;
    try (OutputStream out = plain.createOutputStream(COSName.FLATE_DECODE)) {
      changed = new Rewriting(new ContentStreamWriter(out), resources).all(content);
    }
    return changed ? plain : null;
  }

  private final class Rewriting {
    private final ContentStreamWriter out;
    private final COSDictionary resources;
    private final Deque<Boolean> marked = new ArrayDeque<>();
    private final Deque<COSBase> modes = new ArrayDeque<>();
    private COSBase mode = COSInteger.ZERO;
    private boolean changed;

    Rewriting(ContentStreamWriter out, COSDictionary resources) {
      this.out = out;
      this.resources = resources;
    }

    boolean all(PDContentStream content) throws IOException {
      PDFStreamParser parser = new PDFStreamParser(content);
      List<COSBase> operands = new ArrayList<>();
      for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
        if (token instanceof Operator operator) {
          one(operator, operands);
          operands.clear();
        } else {
          operands.add((COSBase) token);
        }
      }
      return changed;
    }

    private void one(Operator operator, List<COSBase> operands) throws IOException {
      String name = operator.getName();
      switch (name) {
        case "BMC", "BDC" -> open(operands);
        case "EMC" -> {
          changed = true;
          marked.poll();
        }
        case "MP", "DP" -> changed = true;
        default -> drawn(name, operator, operands);
      }
    }

    private void open(List<COSBase> operands) {
      changed = true;
      boolean around = hidden();
      boolean layer = operands.size() > 1 && COSName.OC.equals(operands.get(0));
      marked.push(around || (layer && layers.hides(property(operands.get(1)))));
    }

    private @Nullable COSBase property(COSBase operand) {
      COSDictionary properties = resources.getCOSDictionary(PROPERTIES);
      return operand instanceof COSName name && properties != null
          ? properties.getDictionaryObject(name)
          : operand;
    }

    private boolean hidden() {
      return !marked.isEmpty() && marked.peek();
    }

    private void drawn(String name, Operator operator, List<COSBase> operands) throws IOException {
      state(name, operands);
      if (name.equals("Do") && ofHiddenLayer(operands)) {
        changed = true;
      } else if (!hidden()) {
        write(operator, operands);
      } else if (PAINTS.contains(name)) {
        // A path may have been a clip as well, so it ends without paint.
        out.writeToken(Operator.getOperator(OperatorName.ENDPATH));
      } else if (TEXTS.contains(name)) {
        write(Operator.getOperator("Tr"), List.of(COSInteger.get(INVISIBLE)));
        write(operator, operands);
        write(Operator.getOperator("Tr"), List.of(mode));
      } else if (!PICTURES.contains(name)) {
        write(operator, operands);
      }
    }

    private void state(String name, List<COSBase> operands) {
      switch (name) {
        case "q" -> modes.push(mode);
        case "Q" -> mode = modes.isEmpty() ? mode : modes.pop();
        case "Tr" -> mode = operands.isEmpty() ? mode : operands.get(0);
        default -> {}
      }
    }

    private boolean ofHiddenLayer(List<COSBase> operands) {
      COSDictionary objects = resources.getCOSDictionary(COSName.XOBJECT);
      return objects != null
          && !operands.isEmpty()
          && operands.get(0) instanceof COSName name
          && objects.getDictionaryObject(name) instanceof COSStream object
          && layers.hides(object.getDictionaryObject(COSName.OC));
    }

    private void write(Operator operator, List<COSBase> operands) throws IOException {
      out.writeTokens(operands);
      out.writeToken(operator);
    }
  }
}
