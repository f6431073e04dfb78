package dev.placket.pictures.svg.parse;

import dev.placket.layout.units.Length;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.css.PageSize;
import dev.placket.pictures.fault.Fault;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * The size that the root of a drawing states: viewBox, width and height, and how the one is laid
 * into the other.
 *
 * @param viewBox what is shown, in drawing units: the viewBox and what its width and height show
 *     beside it, or the part of it that they show
 * @param content the part of the drawing's own plane that fills it; the same, unless stretched
 * @param width the stated width if absolute
 * @param height the stated height if absolute
 */
public record SvgSize(
    ViewBox viewBox, ViewBox content, @Nullable Length width, @Nullable Length height) {
  /** CSS Values 4, 5.2: an inch holds 96 px, 6 pc, 72 pt, and a centimetre 40 Q. */
  private static final double POINTS_PER_PIXEL = 0.75;

  /** Proportions that differ by no more than rounding of the stated size would explain. */
  private static final double SAME = 0.005;

  /** Beyond it the single precision of drawing no longer measures what is drawn. */
  private static final double LARGEST = 1e15;

  private static final Pattern LENGTH =
      Pattern.compile("\\s*\\+?([0-9]*\\.?[0-9]+(?:[eE][+-]?[0-9]+)?)(px|pt|pc|mm|cm|in|Q|)\\s*");

  /**
   * The size that the root states.
   *
   * @throws PictureException if it states none, or one that cannot be drawn
   */
  public static SvgSize of(String name, Element root) throws PictureException {
    Length width = length(root.getAttribute("width"));
    Length height = length(root.getAttribute("height"));
    if (width != null && height != null && width.pt() > 0 && height.pt() > 0) {
      check(name, new ViewBox(0, 0, width.pt(), height.pt()));
    }
    SvgSize size = stated(name, root, width, height);
    check(name, size.viewBox);
    return size;
  }

  private static void check(String name, ViewBox box) throws PictureException {
    double away = Math.max(Math.abs(box.x()), Math.abs(box.y()));
    double most = Math.max(away, Math.max(box.width(), box.height()));
    if (most > LARGEST || Math.min(box.width(), box.height()) < 1 / LARGEST) {
      throw new PictureException(
          Fault.content(
                  name,
                  "shows "
                      + box.width()
                      + " × "
                      + box.height()
                      + " units from "
                      + box.x()
                      + ", "
                      + box.y()
                      + ", where drawings are read up to 1e15 units from the origin and from 1e-15"
                      + " units on")
              .remedy("save it at a usual size"));
    }
  }

  private static SvgSize stated(
      String name, Element root, @Nullable Length width, @Nullable Length height)
      throws PictureException {
    String box = root.getAttribute("viewBox");
    if (!box.isBlank()) {
      ViewBox stated = viewBox(name, box);
      check(name, stated);
      return laidOut(stated, width, height, root.getAttribute("preserveAspectRatio").strip());
    }
    if (width == null || height == null) {
      throw new PictureException(
          Fault.content(name, "states neither a viewBox nor a width and height")
              .remedy("save it with a viewBox"));
    }
    if (!(width.pt() > 0) || !(height.pt() > 0)) {
      throw new PictureException(
          Fault.content(name, "states a width or height of nought")
              .remedy("save it with the size of the drawing"));
    }
    ViewBox all = new ViewBox(0, 0, width.pt() / POINTS_PER_PIXEL, height.pt() / POINTS_PER_PIXEL);
    return new SvgSize(all, all, width, height);
  }

  /** SVG 2, 8.6: the viewBox is fitted into, or over, width and height, or stretched to them. */
  private static SvgSize laidOut(
      ViewBox box, @Nullable Length width, @Nullable Length height, String aspect) {
    if (width == null || height == null || !(width.pt() > 0) || !(height.pt() > 0)) {
      return new SvgSize(box, box, width, height);
    }
    double taller = (height.pt() / width.pt()) * (box.width() / box.height());
    if (Math.abs(taller - 1) <= SAME) {
      return new SvgSize(box, box, width, height);
    }
    if (aspect.startsWith("none")) {
      ViewBox stretched =
          new ViewBox(box.x(), box.y() * taller, box.width(), box.height() * taller);
      return new SvgSize(stretched, box, width, height);
    }
    boolean slice = aspect.endsWith("slice");
    // Along one axis the stated size shows more, or less, than the viewBox.
    boolean down = taller > 1 != slice;
    double w = down ? box.width() : box.width() / taller;
    double h = down ? box.height() * taller : box.height();
    ViewBox shown =
        new ViewBox(
            box.x() + (box.width() - w) * share(aspect, "xMin", "xMax"),
            box.y() + (box.height() - h) * share(aspect, "YMin", "YMax"),
            w,
            h);
    return new SvgSize(shown, shown, width, height);
  }

  private static double share(String aspect, String min, String max) {
    return aspect.contains(min) ? 0 : aspect.contains(max) ? 1 : 0.5;
  }

  /** What a drawing's style sheets take for the page: its size in CSS pixels. */
  public static PageSize page(String name, Element root) throws PictureException {
    if (root.getAttribute("viewBox").isBlank()
        && (length(root.getAttribute("width")) == null
            || length(root.getAttribute("height")) == null)) {
      // Its style may state a size; until then that of CSS 2.2, 10.3.2.
      return new PageSize(300, 150);
    }
    SvgSize size = of(name, root);
    Length width = size.width;
    Length height = size.height;
    return new PageSize(
        width == null ? size.viewBox.width() : width.pt() / POINTS_PER_PIXEL,
        height == null ? size.viewBox.height() : height.pt() / POINTS_PER_PIXEL);
  }

  private static ViewBox viewBox(String name, String text) throws PictureException {
    String[] parts = text.strip().split("\\s*,\\s*|\\s+");
    try {
      if (parts.length == 4) {
        return new ViewBox(
            Double.parseDouble(parts[0]),
            Double.parseDouble(parts[1]),
            Double.parseDouble(parts[2]),
            Double.parseDouble(parts[3]));
      }
    } catch (IllegalArgumentException e) {
      throw new PictureException(badBox(name, text), e);
    }
    throw new PictureException(badBox(name, text));
  }

  private static Fault badBox(String name, String text) {
    return Fault.content(name, "its viewBox is '" + text + "'")
        .remedy("give it four numbers, of which width and height are above zero");
  }

  static @Nullable Length length(String text) {
    Matcher m = LENGTH.matcher(text);
    if (!m.matches()) {
      return null;
    }
    double n = Double.parseDouble(m.group(1));
    if (Double.isInfinite(n)) {
      return null;
    }
    return switch (m.group(2)) {
      case "pt" -> Length.pt(n);
      case "pc" -> Length.pt(n * 12);
      case "mm" -> Length.mm(n);
      case "cm" -> Length.cm(n);
      case "in" -> Length.in(n);
      case "Q" -> Length.mm(n / 4);
      default -> Length.pt(n * POINTS_PER_PIXEL);
    };
  }
}
