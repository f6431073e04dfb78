package dev.placket.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example for programs in README is compiled and does what it says. */
class ReadmeExampleTest {
  @TempDir Path dir;

  @Test
  void compilesAndPlacesBothViews() throws Exception {
    compile(
        """
        import dev.placket.layout.fit.*;
        import dev.placket.layout.flat.*;
        import dev.placket.layout.plan.*;
        import dev.placket.layout.sheet.*;
        import dev.placket.layout.units.*;
        import java.util.List;
        public class Example {
          public static void main(String[] args) {
        """
            + example()
            + "}}");
    List<String> said = run().lines().toList();
    assertEquals(3, said.size(), said::toString);
    double[] front = numbers(said.get(0), "front");
    double[] back = numbers(said.get(1), "back");
    assertEquals(0.85, back[2] / front[2], 1e-9, "the stated ratio");
    boolean leads = front[0] < back[0] || front[1] < back[1];
    assertTrue(leads, "the front is left of the back or above it");
    assertTrue(said.get(2).matches("at most 0\\.[01] % below .*"), said.get(2));
  }

  private static String example() throws IOException {
    Path at = Path.of("").toAbsolutePath();
    while (!Files.exists(at.resolve("README.md"))) {
      at = Objects.requireNonNull(at.getParent(), "README.md is above the module");
    }
    Matcher java =
        Pattern.compile("```java\\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(at.resolve("README.md")));
    assertTrue(java.find(), "README has an example for programs");
    return java.group(1);
  }

  private void compile(String source) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    JavaFileObject file =
        new SimpleJavaFileObject(URI.create("string:///Example.java"), JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignore) {
            return source;
          }
        };
    List<String> options = List.of("-d", dir.toString(), "-cp", classes().toString());
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    boolean done =
        compiler
            .getTask(
                new java.io.OutputStreamWriter(said, StandardCharsets.UTF_8),
                null,
                null,
                options,
                null,
                List.of(file))
            .call();
    assertTrue(done, () -> said.toString(StandardCharsets.UTF_8));
  }

  private static Path classes() {
    try {
      URL where =
          dev.placket.layout.solve.Fitter.class.getProtectionDomain().getCodeSource().getLocation();
      return Path.of(where.toURI());
    } catch (java.net.URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private String run() throws Exception {
    PrintStream before = System.out;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    URL[] path = {dir.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(path, getClass().getClassLoader())) {
      System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
      loader
          .loadClass("Example")
          .getMethod("main", String[].class)
          .invoke(null, (Object) new String[0]);
    } finally {
      System.setOut(before);
    }
    return said.toString(StandardCharsets.UTF_8);
  }

  private static double[] numbers(String line, String flat) {
    String[] words = line.split(" ");
    assertEquals(flat, words[0]);
    return new double[] {
      Double.parseDouble(words[1]), Double.parseDouble(words[2]), Double.parseDouble(words[3])
    };
  }
}
