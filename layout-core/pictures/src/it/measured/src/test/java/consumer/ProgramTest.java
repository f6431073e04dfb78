package consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import org.junit.jupiter.api.Test;

/** Pictures on the module path, with the libraries that they bring along. */
class ProgramTest {
  @Test
  void measuresADrawing() throws PictureException {
    assertEquals(new InkedBox(20, 30, 120, 230), Program.bounds());
  }
}
