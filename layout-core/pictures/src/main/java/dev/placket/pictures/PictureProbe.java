package dev.placket.pictures;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ViewBox;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a picture without preparing it.
 *
 * @param name what its source is called
 * @param format what its bytes are, as {@link Picture#format()} has it
 * @param pixels its size, rotated upright; null for a drawing
 * @param viewBox the part of a drawing that is shown; null for a raster
 * @param density as the file states it, rotated with the pixels; null if it states none
 * @param pixelAspect how wide a pixel is for its height; 1 of a drawing
 * @param ground what lies where nothing is drawn
 * @param inkedBox where the ink is: in pixels, or in drawing units; null if the picture is blank
 * @param groundedBox where it is with its white ({@link Drawing#groundedBox}); null for a raster
 * @param insideFrame where the ink is inside a frame line, or null without such a line
 * @param notes what a designer should know
 */
public record PictureProbe(
    String name,
    String format,
    @Nullable PixelSize pixels,
    @Nullable ViewBox viewBox,
    @Nullable PixelDensity density,
    double pixelAspect,
    Ground ground,
    @Nullable InkedBox inkedBox,
    @Nullable InkedBox groundedBox,
    @Nullable InkedBox insideFrame,
    List<PictureNote> notes) {
  /** Copies the list. */
  public PictureProbe {
    notes = List.copyOf(notes);
  }
}
