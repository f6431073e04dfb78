package dev.placket.pictures;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PicturePart;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.pdf.PdfFile;
import dev.placket.pictures.raster.RasterFile;
import dev.placket.pictures.svg.parse.SvgParts;
import dev.placket.pictures.typeface.Typefaces;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A file of one drawing or several: pages of a PDF, parts of an SVG. The pages of a PDF share what
 * they have in common, such as typefaces, as long as they are read from one of these.
 */
public final class PictureFile {
  /** So many parts are named in a message. */
  private static final int NAMED = 12;

  private final PictureSource source;
  private final ReadLimits limits;
  private final Typefaces typefaces;
  private final @Nullable PdfFile pdf;
  private final String digest;
  private final @Nullable SvgParts svg;
  private final List<PicturePart> parts;

  private PictureFile(
      PictureSource source,
      ReadLimits limits,
      Typefaces typefaces,
      @Nullable PdfFile pdf,
      String digest,
      @Nullable SvgParts svg) {
    this.source = source;
    this.limits = limits;
    this.typefaces = typefaces;
    this.pdf = pdf;
    this.digest = digest;
    this.svg = svg;
    this.parts = pdf != null ? pages(pdf) : svg != null ? List.copyOf(svg.parts()) : List.of();
  }

  /**
   * Opens a file; a raster is read only as far as its first bytes.
   *
   * @throws PictureException if it is no picture that is read, or a PDF that cannot be opened
   */
  public static PictureFile open(PictureSource source, ReadLimits limits, Typefaces typefaces)
      throws PictureException {
    return switch (PictureReader.format(source)) {
      case PDF -> {
        byte[] bytes = RasterFile.bytes(source, limits);
        PdfFile pdf = PdfFile.open(source.name(), bytes, limits);
        String digest = PictureReader.digest(bytes);
        yield new PictureFile(source, limits, typefaces, pdf, digest, null);
      }
      case SVG, SVGZ -> {
        SvgParts found = SvgParts.of(PictureReader.plain(source, limits));
        yield new PictureFile(source, limits, typefaces, null, "", found);
      }
      default -> new PictureFile(source, limits, typefaces, null, "", null);
    };
  }

  private static List<PicturePart> pages(PdfFile pdf) {
    boolean one = pdf.parts().size() == 1;
    PicturePart.Kind kind = one ? PicturePart.Kind.WHOLE : PicturePart.Kind.PAGE;
    return pdf.parts().stream()
        .map(p -> new PicturePart(kind, one ? "" : Integer.toString(p.number()), p.title()))
        .toList();
  }

  /**
   * Its parts in the order of the file: the pages of a PDF; of an SVG its views, else the drawings
   * inside it, else its groups. None where it is one drawing without such parts.
   */
  public List<PicturePart> parts() {
    return parts;
  }

  /** Whether an SVG draws something outside of the groups that are its parts. */
  public boolean hasLooseContent() {
    return svg != null && svg.hasLooseContent();
  }

  /** The names of its layers that can be shown or hidden, in the order of the file. */
  public List<String> layers() {
    return pdf == null ? List.of() : pdf.layers();
  }

  /**
   * The part that a name means: its number or identifier, or its title in capitals or not. Of an
   * SVG it may be any element with an identifier.
   *
   * @throws PictureException if there is none, or several have the title; its message lists them
   */
  public PicturePart part(String name) throws PictureException {
    List<PicturePart> called = parts.stream().filter(p -> p.isCalled(name)).toList();
    if (called.size() == 1) {
      return called.get(0);
    }
    if (called.isEmpty() && pdf != null && parts.size() == 1 && name.equals("1")) {
      return parts.get(0);
    }
    if (called.isEmpty() && svg != null) {
      return new PicturePart(PicturePart.Kind.GROUP, name, null);
    }
    String found = called.isEmpty() ? "has no such part" : "several parts have this name";
    String remedy =
        parts.isEmpty() || parts.get(0).called().isEmpty()
            ? "it is one drawing: write its name alone"
            : "it has " + named();
    throw new PictureException(Fault.content(source.name() + "#" + name, found).remedy(remedy));
  }

  private String named() {
    List<String> names = new ArrayList<>();
    for (PicturePart part : parts) {
      String key = part.isWhole() ? "1" : part.key();
      names.add(part.title() == null ? key : key + " (" + part.title() + ")");
    }
    String list = names.stream().limit(NAMED).collect(Collectors.joining(", "));
    return names.size() > NAMED ? list + " and " + (names.size() - NAMED) + " more" : list;
  }

  /**
   * Reads a part.
   *
   * @param swatch whether it is a swatch: white all over is white cloth, not blank
   * @param layers the layers to show; none for those that the file shows by default
   * @throws PictureException if it cannot be used; its message names the file and the part
   */
  public Picture read(PicturePart part, boolean swatch, Set<String> layers)
      throws PictureException {
    if (pdf != null) {
      return new PdfDrawing(
          pdf.page(part.isWhole() ? 1 : Integer.parseInt(part.key()), layers), digest);
    }
    if (!part.isWhole()) {
      return PictureReader.part(source, part.key(), limits, typefaces);
    }
    return swatch
        ? PictureReader.readSwatch(source, limits, typefaces)
        : PictureReader.read(source, limits, typefaces);
  }

  /**
   * All of it as one drawing: an SVG with its parts, or the only page of a PDF.
   *
   * @throws PictureException if it is a PDF of several pages; its message lists them
   */
  public PicturePart whole() throws PictureException {
    if (pdf != null && parts.size() > 1) {
      throw new PictureException(
          Fault.content(source.name(), "has " + parts.size() + " pages")
              .remedy("name one, as in " + source.name() + "#2: " + named()));
    }
    return pdf == null ? PicturePart.WHOLE : parts.get(0);
  }
}
