package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The installed command names every part it is made of, with its licence (identifiers of SPDX, bill
 * of materials after CycloneDX 1.6).
 */
class NoticeIT {
  private static final Path HOME = Path.of(System.getProperty("placket.folder"));
  private static final Path BILL = HOME.resolve("lib/placket-bom.json");
  private static final String OWN = "dev.placket";

  @BeforeEach
  void bill() {
    assumeTrue(Files.exists(BILL), "an offline build makes no bill of materials");
  }

  private static JsonNode materials() throws IOException {
    return new ObjectMapper().readTree(BILL.toFile());
  }

  /** Each jar is in the bill, under its version and SHA-256, and nothing else is. */
  @Test
  void theBillListsTheJarsThatAreThere() throws Exception {
    Map<String, String> listed = new TreeMap<>();
    for (JsonNode part : materials().path("components")) {
      String name = part.path("name").asText() + "-" + part.path("version").asText() + ".jar";
      String digest = "";
      for (JsonNode hash : part.path("hashes")) {
        if (hash.path("alg").asText().equals("SHA-256")) {
          digest = hash.path("content").asText();
        }
      }
      listed.put(name, part.path("group").asText().equals(OWN) ? "" : digest);
    }
    Map<String, String> there = new TreeMap<>();
    try (var jars = Files.newDirectoryStream(HOME.resolve("lib"), "*.jar")) {
      for (Path jar : jars) {
        String name = jar.getFileName().toString();
        byte[] sha = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(jar));
        boolean own = name.startsWith("placket-") || name.startsWith("layout-demo-");
        there.put(name, own ? "" : HexFormat.of().formatHex(sha));
      }
    }
    there.keySet().removeIf(name -> name.startsWith("layout-demo-"));
    assertEquals(there, listed);
  }

  @Test
  void theNoticeHasTheLicenceOfEveryPart() throws IOException {
    Map<String, String> noticed = new TreeMap<>();
    for (String line : Files.readAllLines(HOME.resolve("NOTICE"))) {
      String[] words = line.split(" +", -1);
      if (words.length == 3 && words[2].startsWith("https://")) {
        noticed.put(words[0], words[1]);
      }
    }
    Map<String, String> stated = new TreeMap<>();
    TreeSet<String> versions = new TreeSet<>();
    for (JsonNode part : materials().path("components")) {
      String group = part.path("group").asText();
      versions.add(part.path("version").asText());
      if (!group.equals(OWN)) {
        String licence = part.at("/licenses/0/license/id").asText();
        // Its project file says "The BSD License"; the text in its jars is that of three clauses.
        boolean bsd = group.startsWith("com.twelvemonkeys") && licence.startsWith("BSD-");
        stated.put(group, bsd ? "BSD-3-Clause" : licence);
      }
    }
    assertEquals(stated, noticed);
    assertTrue(versions.size() > 10, "a bill of many parts: " + versions);
    assertTrue(Files.isRegularFile(HOME.resolve("LICENSE")));
  }

  /** Nothing of the machine that built it stands in the bill. */
  @Test
  void theBillHasNoPathOfAMachine() throws IOException {
    String text = Files.readString(BILL);
    for (String path : new String[] {"file:", System.getProperty("user.home"), "localhost"}) {
      assertTrue(!text.contains(path), path);
    }
  }
}
