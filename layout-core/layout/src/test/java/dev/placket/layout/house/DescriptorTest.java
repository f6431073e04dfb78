package dev.placket.layout.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.house.Library;
import dev.placket.layout.check.Referee;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleDescriptor.Exports;
import java.lang.module.ModuleDescriptor.Requires;
import java.lang.module.ModuleDescriptor.Requires.Modifier;
import java.nio.file.Files;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the module shows and what it asks for. */
class DescriptorTest {
  private static ModuleDescriptor descriptor;

  @BeforeAll
  static void read() throws IOException {
    try (InputStream in =
        Files.newInputStream(
            Library.of("dev.placket.layout", Referee.class)
                .compiled()
                .resolve("module-info.class"))) {
      descriptor = ModuleDescriptor.read(in);
    }
  }

  @Test
  void exportsWhatIsMeantToAll() {
    Set<String> meant = new TreeSet<>();
    for (String name :
        Set.of("callout", "check", "density", "fit", "flat", "plan", "sheet", "units")) {
      meant.add("dev.placket.layout." + name);
    }
    Set<String> exported =
        descriptor.exports().stream()
            .map(Exports::source)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(meant, exported);
    assertTrue(descriptor.exports().stream().noneMatch(Exports::isQualified));
  }

  @Test
  void opensNothing() {
    assertFalse(descriptor.isOpen());
    assertEquals(Set.of(), descriptor.opens());
  }

  @Test
  void asksForNothingButTheBaseAtRunTime() {
    Set<String> atRunTime =
        descriptor.requires().stream()
            .filter(r -> !r.modifiers().contains(Modifier.STATIC))
            .map(Requires::name)
            .collect(Collectors.toSet());
    assertEquals(Set.of("java.base"), atRunTime);
  }
}
