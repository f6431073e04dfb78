package dev.placket.house;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.net.URISyntaxException;
import java.nio.file.Path;

/**
 * A library's own classes and sources, for the tests of the house.
 *
 * @param root the package that all of its packages lie in, with a dot at the end
 * @param classes its classes without tests
 * @param compiled the folder that it was compiled into
 */
public record Library(String root, JavaClasses classes, Path compiled) {
  /** The library with the root package {@code name} that {@code member} belongs to. */
  public static Library of(String name, Class<?> member) {
    try {
      Path compiled = Path.of(member.getProtectionDomain().getCodeSource().getLocation().toURI());
      JavaClasses classes =
          new ClassFileImporter()
              .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
              .importPath(compiled);
      return new Library(name + ".", classes, compiled);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The folder of the library's sources. */
  public Path sources() {
    return compiled.resolve("../../src/main/java").normalize();
  }
}
