package dev.placket.demo.start;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Reads classes from one jar, and all else from its parent.
 *
 * <p>The class path's own loader makes an address, a code source and a look at the manifest for
 * every class; for the fifteen hundred that a first sheet takes that is a tenth of the whole run.
 */
final class JarClasses extends ClassLoader {
  static {
    registerAsParallelCapable();
  }

  private final ZipFile jar;

  /**
   * Over a jar that stays open.
   *
   * @param parent is asked for what the jar does not hold, and for resources
   */
  JarClasses(ZipFile jar, ClassLoader parent) {
    super(parent);
    this.jar = jar;
  }

  /** Its own first: the parent is on the same jar and would read them in its slower way. */
  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      if (known != null) {
        return known;
      }
      ZipEntry entry = name.startsWith("java.") ? null : jar.getEntry(file(name));
      return entry == null ? getParent().loadClass(name) : define(name, entry);
    }
  }

  private Class<?> define(String name, ZipEntry entry) throws ClassNotFoundException {
    try (InputStream in = jar.getInputStream(entry)) {
      byte[] bytes = new byte[(int) entry.getSize()];
      return defineClass(name, bytes, 0, in.readNBytes(bytes, 0, bytes.length));
    } catch (IOException e) {
      throw new ClassNotFoundException(jar.getName() + ": " + entry + " cannot be read", e);
    }
  }

  private static String file(String name) {
    return name.replace('.', '/').concat(".class");
  }
}
