package dev.placket.demo.start;

import java.io.File;
import java.io.IOException;
import java.util.zip.ZipFile;

/** Where {@code java -jar placket.jar} begins. */
public final class Start {
  private static final String MAIN = "dev.placket.demo.Main";

  private Start() {}

  /** Runs the command with the classes of the jar that it was started from. */
  public static void main(String[] args) throws IOException, ReflectiveOperationException {
    ClassLoader classes = classes();
    Thread.currentThread().setContextClassLoader(classes);
    classes.loadClass(MAIN).getMethod("main", String[].class).invoke(null, (Object) args);
  }

  /** Those of the jar; on any other class path, the ones that are there already. */
  private static ClassLoader classes() throws IOException {
    File path = new File(System.getProperty("java.class.path", ""));
    ClassLoader usual = Start.class.getClassLoader();
    return path.isFile() ? new JarClasses(new ZipFile(path), usual) : usual;
  }
}
