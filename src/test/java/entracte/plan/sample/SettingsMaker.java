package entracte.plan.sample;

import entracte.rig.Control;
import entracte.rig.Group;
import entracte.rig.Jumper;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Scale;
import entracte.setlist.Patch;
import entracte.setlist.Setting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes settings. Jumpers are asked for as they could stand for the whole set. */
final class SettingsMaker {
  private static final double NAMED = 0.55;

  private final Set<Feature> features;
  private final Map<Module, Map<String, String>> jumpers = new HashMap<>();

  SettingsMaker(Dice dice, Set<Feature> features, Rig rig) {
    this.features = features;
    for (Module module : rig.modules()) {
      Map<String, String> positions = new HashMap<>();
      for (Jumper jumper : module.kind().jumpers()) {
        positions.put(jumper.name(), dice.one(jumper.positions()));
      }
      jumpers.put(module, positions);
    }
  }

  List<Setting> of(List<Player> players, Dice dice) {
    List<Setting> all = new ArrayList<>();
    for (Player player : players) {
      for (Control control : player.module().controls()) {
        if (dice.chance(NAMED) && isInUse(player, control)) {
          all.add(new Setting(owner(player, control), control.name(), value(control, dice)));
        }
      }
      if (dice.chance(NAMED)) {
        jumpers
            .get(player.module())
            .forEach((name, at) -> all.add(new Setting(player.role(), name, at)));
      }
    }
    return all;
  }

  /** A channel is set only if something is plugged in it. */
  private static boolean isInUse(Player player, Control control) {
    return control.group().form() == Group.Form.OWN
        || player.freeIns().stream()
            .noneMatch(
                hole ->
                    hole.socket().group().equals(control.group())
                        && hole.socket().number() == control.number());
  }

  private static String owner(Player player, Control control) {
    return control.group().form() == Group.Form.OWN
        ? player.role()
        : player.channel(control.number());
  }

  private String value(Control control, Dice dice) {
    if (!control.isKnob()) {
      return dice.one(control.positions());
    }
    return figure(control.scale().orElseThrow(), dice);
  }

  private String figure(Scale scale, Dice dice) {
    int value = dice.between((int) scale.low(), (int) scale.high());
    boolean loose = features.contains(Feature.TOLERANCES) && dice.chance(0.7);
    return value + (loose ? " +-" + dice.one(List.of("0.5", "1", "1.5", "2.5")) : "");
  }

  /** Some of a patch's knobs, elsewhere. */
  List<Setting> changed(Patch patch, Dice dice) {
    List<Setting> all = new ArrayList<>();
    for (Setting setting : patch.settings()) {
      boolean isChannelOrTone =
          setting.control().equals("level") || setting.control().equals("cutoff");
      if (isChannelOrTone && dice.chance(0.4)) {
        Scale scale = new Scale(0, 10);
        all.add(new Setting(setting.owner(), setting.control(), figure(scale, dice)));
      }
    }
    return all;
  }
}
