package dev.placket.demo.jar;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * A jar made runnable does what it did: what each lambda gives is compared with what the JDK's own
 * linkage gives, in this process.
 */
class RunnableJarTest {
  private static final String TEXT = "a/text.txt";

  @TempDir Path folder;

  @Test
  void everyKindOfLambdaGivesWhatItGave() throws Exception {
    List<String> expected = new Lambdas().get();
    assertEquals(33, expected.size());
    try (URLClassLoader made = loader(made("made.jar"))) {
      Class<?> type = made.loadClass(Lambdas.class.getName());
      assertSame(made, type.getClassLoader());
      Supplier<?> lambdas = (Supplier<?>) type.getConstructor().newInstance();
      assertEquals(expected, lambdas.get());
    }
  }

  @Test
  void noneIsLinkedAtRunTimeButWhatIsToBeWrittenOut() throws Exception {
    List<String> before = linked(merged());
    List<String> after = linked(made("made.jar"));
    assertTrue(before.contains("metafactory"), before::toString);
    Set<String> left = after.stream().filter(RunnableJarTest::ofLambda).collect(Collectors.toSet());
    assertEquals(Set.of("altMetafactory"), left);
    assertEquals(others(before), others(after));
  }

  @Test
  void whatIsNamedIsNotPackedAllElseStaysAndTheBytesAreTheSameEachTime() throws Exception {
    Path made = made("made.jar");
    assertArrayEquals(Files.readAllBytes(made), Files.readAllBytes(made("again.jar")));
    try (ZipFile jar = new ZipFile(made.toFile());
        InputStream text = jar.getInputStream(jar.getEntry(TEXT))) {
      assertEquals("as it was", new String(text.readAllBytes(), StandardCharsets.UTF_8));
      List<String> stored =
          jar.stream()
              .filter(e -> e.getMethod() == ZipEntry.STORED)
              .map(ZipEntry::getName)
              .toList();
      assertEquals(List.of("dev/placket/demo/jar/Lambdas.class"), stored);
      assertEquals(1, jar.stream().map(ZipEntry::getTime).distinct().count());
    }
  }

  private static boolean ofLambda(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith("metafactory");
  }

  private static List<String> others(List<String> all) {
    return all.stream().filter(n -> !ofLambda(n)).toList();
  }

  private static URLClassLoader loader(Path jar) throws IOException {
    URL[] at = {jar.toUri().toURL()};
    return new URLClassLoader(at, ClassLoader.getPlatformClassLoader());
  }

  private Path made(String name) throws IOException {
    Path made = folder.resolve(name);
    RunnableJar.of(merged()).write(made, Set.of(Lambdas.class.getName()));
    return made;
  }

  /** The lambdas of this test and a text. */
  private Path merged() throws IOException {
    Path merged = folder.resolve("merged.jar");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(merged));
        Stream<Path> files = Files.list(classes())) {
      for (Path file : files.sorted().toList()) {
        put(out, "dev/placket/demo/jar/" + file.getFileName(), Files.readAllBytes(file));
      }
      put(out, TEXT, "as it was".getBytes(StandardCharsets.UTF_8));
    }
    return merged;
  }

  private static Path classes() {
    try {
      URL file = Objects.requireNonNull(Lambdas.class.getResource("Lambdas.class"));
      return Path.of(file.toURI()).resolveSibling(".");
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void put(ZipOutputStream out, String name, byte[] bytes) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(1_000_000_000_000L);
    out.putNextEntry(entry);
    out.write(bytes);
    out.closeEntry();
  }

  /** The names of the bootstrap methods of all call sites that are linked at run time. */
  private static List<String> linked(Path jar) throws IOException {
    List<String> names = new ArrayList<>();
    ClassVisitor reader =
        new ClassVisitor(Opcodes.ASM9) {
          @Override
          public MethodVisitor visitMethod(int a, String n, String d, String s, String[] t) {
            return new MethodVisitor(Opcodes.ASM9) {
              @Override
              public void visitInvokeDynamicInsn(String n, String d, Handle by, Object... with) {
                names.add(by.getName());
              }
            };
          }
        };
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (entry.getName().contains("/Lambdas") && entry.getName().endsWith(".class")) {
          try (InputStream in = zip.getInputStream(entry)) {
            new ClassReader(in).accept(reader, 0);
          }
        }
      }
    }
    return names;
  }
}
