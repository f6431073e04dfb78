package consumer;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;

/** Measures a drawing that it holds in memory. */
public final class Program {
  private static final String DRAWING =
      "<svg xmlns='http://www.w3.org/2000/svg' width='200' height='300' viewBox='0 0 200 300'>"
          + "<path d='M20 30H120V230H20Z'/></svg>";

  private Program() {}

  /** The bounds of what it draws, in drawing units. */
  public static InkedBox bounds() throws PictureException {
    byte[] bytes = DRAWING.getBytes(StandardCharsets.UTF_8);
    return PictureReader.read(PictureSource.of("front.svg", bytes), ReadLimits.DEFAULT).inkedBox();
  }
}
