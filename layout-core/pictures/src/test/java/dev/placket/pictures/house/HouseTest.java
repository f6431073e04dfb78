package dev.placket.pictures.house;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import dev.placket.house.CycleRules;
import dev.placket.house.ExplainedRules;
import dev.placket.house.Library;
import dev.placket.house.PurityRules;
import dev.placket.house.SpeechRules;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.PictureReader;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * The module of pictures: reading uses the list, rewritings and bridges; preparing uses reading.
 */
class HouseTest {
  private static final Library LIBRARY = Library.of("dev.placket.pictures", PictureReader.class);

  @Nested
  class Packages extends CycleRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }

    @Override
    protected Map<String, Set<String>> mayUse() {
      return Map.of(
          "css", Set.of(),
          "svg", Set.of(),
          "svg.bridge", Set.of(),
          "svg.rewrite", Set.of(),
          "fault", Set.of(),
          "", Set.of("css", "fault", "svg", "svg.bridge", "svg.rewrite"),
          "prepare", Set.of("", "fault"));
    }
  }

  @Nested
  class Speech extends SpeechRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }
  }

  @Nested
  class Explained extends ExplainedRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }
  }

  @Nested
  class Pure extends PurityRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }
  }

  /** Of the solver's module, pictures know lengths, densities and the one box they measure. */
  @Test
  void usesTheValuesOfTheSolverAlone() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "dev.placket.layout.fit",
            "dev.placket.layout.sheet",
            "dev.placket.layout.check",
            "dev.placket.layout.plan")
        .check(LIBRARY.classes());
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAPackage(InkedBox.class.getPackageName())
                .and(not(equivalentTo(InkedBox.class))))
        .check(LIBRARY.classes());
  }

  @Test
  void styleSheetsKnowNothingOfPictures() {
    noClasses()
        .that()
        .resideInAPackage("dev.placket.pictures.css")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.batik..", "java.awt..", "dev.placket.layout..")
        .check(LIBRARY.classes());
  }
}
