package entracte.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Whether the computer runs on mains. Linux tells of every supply in a folder of its own: {@code
 * type} is Mains, USB or Battery, {@code online} is 1 for one that feeds, {@code status} says what
 * a battery does and {@code capacity} how full it is in per cent (kernel documentation, ABI
 * testing/sysfs-class-power).
 */
final class PowerTrial {
  private static final String WHAT = "power";

  /** Our choice: half a battery may not last from the soundcheck to the last encore. */
  private static final int ENOUGH_PER_CENT = 50;

  private PowerTrial() {}

  static Trial of(Path powers) {
    List<Path> supplies = supplies(powers);
    if (supplies.stream().anyMatch(PowerTrial::feeds)) {
      return Trial.ready(WHAT, "The computer runs on mains.");
    }
    for (Path supply : supplies) {
      if (read(supply, "type").equals("Battery") && read(supply, "status").equals("Discharging")) {
        return battery(read(supply, "capacity"));
      }
    }
    return Trial.look(
        WHAT,
        "The system does not tell whether it runs on mains or on a battery.",
        "Plug the power supply in, where nobody kicks it out.");
  }

  private static Trial battery(String capacity) {
    String says = "The computer runs on its battery";
    String advice = "Plug the power supply in, where nobody kicks it out.";
    if (!capacity.matches("\\d{1,3}")) {
      return Trial.look(WHAT, says + ".", advice);
    }
    String full = says + ", " + capacity + " per cent full.";
    return Integer.parseInt(capacity) >= ENOUGH_PER_CENT
        ? Trial.look(WHAT, full, advice)
        : Trial.notReady(WHAT, full, advice);
  }

  private static boolean feeds(Path supply) {
    return !read(supply, "type").equals("Battery") && read(supply, "online").equals("1");
  }

  private static List<Path> supplies(Path powers) {
    try (Stream<Path> each = Files.list(powers)) {
      return new ArrayList<>(each.sorted().toList());
    } catch (IOException notTold) {
      return List.of();
    }
  }

  private static String read(Path supply, String name) {
    try {
      return Files.readString(supply.resolve(name)).strip();
    } catch (IOException notTold) {
      return "";
    }
  }
}
