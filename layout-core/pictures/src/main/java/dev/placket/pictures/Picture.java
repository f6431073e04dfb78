package dev.placket.pictures;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureNote;
import java.util.List;

/** A picture that was read: either drawn with paths or made of pixels. */
public sealed interface Picture permits Drawing, RasterPicture {
  /** What messages call it: the name of its source. */
  String name();

  /** The format its bytes are in, whatever its name ends with: {@code SVG}, {@code PNG}, … */
  String format();

  /** Where its ink is, strokes included: in drawing units, or in pixels. */
  InkedBox inkedBox();

  /** What a designer should know about how it was read; often empty. */
  List<PictureNote> notes();

  /** The notes of what is drawn other than the file says. */
  default List<PictureNote> changes() {
    return notes().stream().filter(PictureNote::changesPicture).toList();
  }

  /** SHA-256 of the source bytes, 64 lower-case hexadecimal digits. */
  String digest();
}
