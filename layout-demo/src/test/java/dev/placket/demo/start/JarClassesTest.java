package dev.placket.demo.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Classes are the jar's own where it has them, and the parent's where it has not. */
class JarClassesTest {
  /** What the jar holds. */
  public static final class Held {
    @Override
    public String toString() {
      return "held";
    }
  }

  private static final String HELD = Held.class.getName();

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void jar() throws IOException {
    file = folder.resolve("held.jar");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file));
        InputStream held = Held.class.getResourceAsStream("JarClassesTest$Held.class")) {
      out.putNextEntry(new ZipEntry(HELD.replace('.', '/') + ".class"));
      Objects.requireNonNull(held).transferTo(out);
      out.putNextEntry(new ZipEntry("dev/placket/demo/start/Torn.class"));
      out.write(1);
    }
  }

  @Test
  void whatTheJarHoldsIsItsOwnAndAllElseItsParents() throws Exception {
    try (ZipFile jar = new ZipFile(file.toFile())) {
      JarClasses classes = new JarClasses(jar, getClass().getClassLoader());
      Class<?> held = classes.loadClass(HELD);
      assertSame(classes, held.getClassLoader());
      assertSame(held, classes.loadClass(HELD));
      assertEquals("held", held.getConstructor().newInstance().toString());
      assertSame(JarClassesTest.class, classes.loadClass(JarClassesTest.class.getName()));
      assertSame(String.class, classes.loadClass("java.lang.String"));
      assertNotNull(classes.getResource(HELD.replace('.', '/') + ".class"));
    }
  }

  @Test
  void twoThreadsGetOneClass() throws Exception {
    try (ZipFile jar = new ZipFile(file.toFile())) {
      JarClasses classes = new JarClasses(jar, getClass().getClassLoader());
      List<Class<?>> all =
          IntStream.range(0, 64)
              .parallel()
              .<Class<?>>mapToObj(i -> load(classes))
              .distinct()
              .toList();
      assertEquals(1, all.size());
    }
  }

  @Test
  void whatIsNowhereIsNotFoundAndWhatIsTornIsRefused() throws Exception {
    try (ZipFile jar = new ZipFile(file.toFile())) {
      JarClasses classes = new JarClasses(jar, getClass().getClassLoader());
      assertThrows(ClassNotFoundException.class, () -> classes.loadClass("dev.placket.None"));
      assertThrows(ClassFormatError.class, () -> classes.loadClass("dev.placket.demo.start.Torn"));
    }
  }

  private static Class<?> load(ClassLoader from) {
    try {
      return from.loadClass(HELD);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }
}
