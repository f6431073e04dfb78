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
      return Map.ofEntries(
          Map.entry("css", Set.of()),
          Map.entry("path", Set.of()),
          Map.entry("fault", Set.of()),
          Map.entry("svg", Set.of()),
          Map.entry("svg.rewrite", Set.of()),
          Map.entry("base", Set.of("fault")),
          Map.entry("shape", Set.of("base")),
          Map.entry("svg.bridge", Set.of("shape")),
          Map.entry("pdf", Set.of("fault", "base", "shape")),
          Map.entry("rows", Set.of("base")),
          Map.entry("ink", Set.of("base", "rows")),
          Map.entry("raster", Set.of("fault", "base", "rows", "ink")),
          Map.entry("typeface", Set.of("fault", "base")),
          Map.entry("svg.parse", Set.of("css", "fault", "base")),
          Map.entry("svg.font", Set.of("fault", "base", "typeface", "svg.parse")),
          Map.entry("svg.measure", Set.of("css", "fault", "svg.bridge", "base", "shape", "path")),
          Map.entry("svg.mend", Set.of("base", "shape", "svg.measure")),
          Map.entry("svg.layer", Set.of("svg.rewrite", "svg.bridge", "base")),
          Map.entry(
              "",
              Set.of(
                  "css",
                  "fault",
                  "svg",
                  "svg.rewrite",
                  "svg.bridge",
                  "base",
                  "shape",
                  "path",
                  "pdf",
                  "rows",
                  "ink",
                  "raster",
                  "typeface",
                  "svg.parse",
                  "svg.font",
                  "svg.measure",
                  "svg.mend",
                  "svg.layer")),
          Map.entry("prepare", Set.of("fault", "base", "")));
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
