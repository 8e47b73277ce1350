package entracte;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the build says of the libraries in the jar, and that each has one version for good. */
class NoticeTest {
  private static final Pattern DEPENDENCY = Pattern.compile("(?s)<dependency>(.*?)</dependency>");
  private static final Pattern VERSION = Pattern.compile("<version>([^<]*)</version>");

  private static String pom() throws IOException {
    String text = Files.readString(Path.of("pom.xml"));
    return text.replaceAll("(?s)<!--.*?-->", "");
  }

  private static String notice() throws IOException {
    try (InputStream in = NoticeTest.class.getResourceAsStream("/entracte/third-party.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String value(String xml, String name) {
    Matcher found = Pattern.compile("<" + name + ">([^<]*)</" + name + ">").matcher(xml);
    return found.find() ? found.group(1) : "";
  }

  @Test
  void everyLibraryInTheJarIsListedWithItsLicence() throws IOException {
    List<String> missing = new ArrayList<>();
    int listed = 0;
    String main = pom().replaceAll("(?s)<dependencyManagement>.*?</dependencyManagement>", "");
    Matcher dependency = DEPENDENCY.matcher(main.replaceAll("(?s)<profiles>.*", ""));
    while (dependency.find()) {
      String xml = dependency.group(1);
      boolean inJar = !value(xml, "scope").equals("test") && xml.contains("<artifactId>");
      boolean plugin = value(xml, "groupId").startsWith("org.pitest");
      if (inJar && !plugin) {
        String name = value(xml, "artifactId") + ":" + value(xml, "version");
        listed++;
        boolean told =
            notice().lines().anyMatch(l -> l.contains(name) && l.strip().startsWith("("));
        if (!told) {
          missing.add(name);
        }
      }
    }
    assertTrue(listed >= 5, "only " + listed + " libraries seen");
    assertEquals(List.of(), missing);
  }

  /** The licences that can be, by what the notice calls them. */
  @Test
  void everyLicenceIsOneThatLetsThemBeHandedOn() throws IOException {
    List<String> lines =
        notice().lines().map(String::strip).filter(l -> l.startsWith("(")).toList();
    assertTrue(lines.size() >= 9, notice());
    for (String line : lines) {
      assertTrue(line.matches("\\(.*(Apache|GNU Lesser).*"), line);
    }
  }

  @Test
  void everyVersionIsPinned() throws IOException {
    Matcher version = VERSION.matcher(pom());
    int seen = 0;
    while (version.find()) {
      seen++;
      assertTrue(version.group(1).matches("[0-9]+(\\.[0-9]+)*"), version.group(1));
    }
    assertTrue(seen >= 20, "only " + seen + " versions seen");
  }
}
