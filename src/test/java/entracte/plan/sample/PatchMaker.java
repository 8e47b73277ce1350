package entracte.plan.sample;

import entracte.plan.sample.Player.Hole;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.setlist.Patch;
import entracte.setlist.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes a patch: voices that reach the output, what bends them, and how it is all set. */
final class PatchMaker {
  private static final List<String> SOUND = List.of("oscillator", "lfo");

  private static final int SPREAD = 3;

  private final Dice dice;
  private final Set<Feature> features;
  private final Map<String, List<Module>> spare = new LinkedHashMap<>();
  private final List<Player> players = new ArrayList<>();
  private final List<Role> roles = new ArrayList<>();
  private final Wiring wiring;
  private final Player keys;
  private final Player output;

  /** A patch and cords that would do for it. */
  record Made(Patch patch, List<Cord> cords) {}

  PatchMaker(Dice dice, Set<Feature> features, Rig rig) {
    this.dice = dice;
    this.features = features;
    for (Module module : dice.shuffled(rig.modules())) {
      spare.computeIfAbsent(module.kind().name(), k -> new ArrayList<>()).add(module);
    }
    keys = new Player(RigMaker.KEYS, spare.get(RigMaker.KEYS).get(0), "");
    output = new Player(RigMaker.OUTPUT, spare.get(RigMaker.OUTPUT).get(0), "");
    wiring = new Wiring(rig, multiples());
  }

  private List<Module> multiples() {
    List<Module> all = new ArrayList<>(spare.getOrDefault("multiple", List.of()));
    all.addAll(spare.getOrDefault("small multiple", List.of()));
    all.sort(Comparator.comparing(m -> -m.kind().taps()));
    return all;
  }

  Made make(String name, SettingsMaker settings) {
    int voices = 1 + dice.below(output.freeIns().size());
    for (int voice = 1; voice <= voices; voice++) {
      addVoice(voice);
    }
    for (int extra = dice.below(2 * voices + 1); extra > 0 && !players.isEmpty(); extra--) {
      bend(dice.one(players), dice.one(players));
    }
    Patch patch = new Patch(name, roles, wiring.connections(), settings.of(players, dice));
    return new Made(patch, wiring.cords());
  }

  private Optional<Player> cast(String role, String... kinds) {
    for (String kind : kinds) {
      List<Module> left = spare.getOrDefault(kind, List.of());
      if (!left.isEmpty()) {
        Module module = left.remove(left.size() - 1);
        Player player = new Player(role, module, labels());
        players.add(player);
        roles.add(new Role(role, accepts(module)));
        return Optional.of(player);
      }
    }
    return Optional.empty();
  }

  private String labels() {
    return features.contains(Feature.PINNED) && dice.chance(0.3) ? "123" : "abc";
  }

  private List<String> accepts(Module module) {
    String kind = module.kind().name();
    if (features.contains(Feature.PINNED) && dice.chance(0.2)) {
      return List.of(module.name());
    }
    if (features.contains(Feature.SEVERAL_KINDS) && dice.chance(0.5)) {
      if (SOUND.contains(kind)) {
        return SOUND;
      }
      if (kind.equals("filter")) {
        return List.of("filter", "amplifier");
      }
    }
    return List.of(kind);
  }

  private boolean connect(Hole source, Player to, String jack) {
    return to.hole(jack).filter(hole -> connect(source, to, hole)).isPresent();
  }

  private boolean connect(Hole source, Player to, Hole sink) {
    return wiring.connect(source, sink) && to.free().remove(sink);
  }

  private void addVoice(int voice) {
    Optional<Player> tone = cast("tone " + voice, "oscillator", "lfo");
    if (tone.isEmpty()) {
      return;
    }
    Hole sound = dice.one(tone.get().outs());
    tune(voice, tone.get());
    if (dice.chance(features.contains(Feature.CLOSED) ? 0.8 : 0.5)) {
      sound = blend(voice, sound);
    }
    if (dice.chance(0.7)) {
      sound = through("filter", "shade " + voice, sound);
    }
    if (dice.chance(0.5)) {
      sound = through("amplifier", "swell " + voice, sound);
    }
    if (!connect(sound, output, "side " + voice)) {
      connect(tone.get().outs().get(tone.get().outs().size() - 1), output, "side " + voice);
    }
    addBends(voice);
  }

  private void tune(int voice, Player tone) {
    keys.outs().stream()
        .filter(hole -> hole.name().equals("keys.pitch " + voice))
        .forEach(pitch -> connect(pitch, tone, "pitch"));
  }

  /** Sets a second tone beside the first, each in a channel of a mixer. */
  private Hole blend(int voice, Hole sound) {
    if (spare.getOrDefault("mixer", List.of()).isEmpty()) {
      return sound;
    }
    Player mixer = cast("blend " + voice, "mixer").orElseThrow();
    connect(sound, mixer, mixer.freeIns().get(0));
    cast("tone b" + voice, "oscillator", "lfo")
        .ifPresent(
            second -> {
              connect(second.out(), mixer, mixer.freeIns().get(0));
              tune(voice, second);
            });
    return mixer.out();
  }

  private Hole through(String kind, String role, Hole sound) {
    Optional<Player> player = cast(role, kind);
    return player.isPresent() && connect(sound, player.get(), "audio") ? player.get().out() : sound;
  }

  private void addBends(int voice) {
    if (dice.chance(0.6)) {
      cast("shape " + voice, "envelope").ifPresent(shape -> gate(voice, shape));
    }
    if (dice.chance(0.4)) {
      cast("sway " + voice, "lfo").ifPresent(sway -> bend(sway, dice.one(players)));
    }
    if (features.contains(Feature.MULTIPLES) && dice.chance(0.15)) {
      split(voice);
    }
    if (!multiples().isEmpty() && dice.chance(0.5)) {
      spread(dice.one(dice.one(players).outs()));
    }
  }

  /** Sends one signal to several inputs, as far as there are multiples for it. */
  private void spread(Hole source) {
    List<Player> all = dice.shuffled(players);
    for (Player player : all.subList(0, Math.min(all.size(), SPREAD))) {
      List<Hole> ins = player.freeIns();
      if (!ins.isEmpty()) {
        connect(source, player, dice.one(ins));
      }
    }
  }

  private void gate(int voice, Player shape) {
    keys.outs().stream()
        .filter(hole -> hole.name().equals("keys.gate " + voice))
        .forEach(gate -> connect(gate, shape, "gate"));
    bend(shape, dice.one(players));
  }

  private void bend(Player from, Player to) {
    List<Hole> ins = to.freeIns();
    if (!ins.isEmpty() && !from.outs().isEmpty()) {
      connect(dice.one(from.outs()), to, dice.one(ins));
    }
  }

  /** A multiple that the patch names itself, with one cord in and one out. */
  private void split(int voice) {
    List<Hole> ins = players.get(0).freeIns();
    List<Module> left = spare.getOrDefault("multiple", List.of());
    if (left.size() < 2 || ins.isEmpty()) {
      return;
    }
    Module module = left.get(0);
    if (!wiring.giveUp(module)) {
      return;
    }
    left.remove(module);
    String role = "split " + voice;
    roles.add(new Role(role, List.of("multiple")));
    Hole in = new Hole(role + ".tap", module.sockets().get(0));
    Hole out = new Hole(role + ".tap 2", module.sockets().get(1));
    wiring.connect(dice.one(players.get(0).outs()), in);
    connect(out, players.get(0), ins.get(0));
  }
}
