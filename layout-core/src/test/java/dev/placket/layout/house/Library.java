package dev.placket.layout.house;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.placket.layout.check.Referee;
import java.net.URISyntaxException;
import java.nio.file.Path;

/** The library's own classes and sources, for the tests of the house. */
final class Library {
  static final String ROOT = "dev.placket.layout.";
  static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dev.placket.layout");

  private Library() {}

  /** The folder that the library was compiled into. */
  static Path compiled() {
    try {
      return Path.of(Referee.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The folder of the library's sources. */
  static Path sources() {
    return compiled().resolve("../../src/main/java").normalize();
  }
}
