package entracte.plan.sample;

import entracte.check.KindBuilder;
import entracte.check.RigBuilder;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes a rig: keys and an output once, and of the other kinds as chance will have it. */
final class RigMaker {
  static final String KEYS = "keys";
  static final String OUTPUT = "output";
  private static final int ROW = 8;
  private static final int MODULES_PER_VOICE = 9;

  private final Dice dice;
  private final Set<Feature> features;
  private final int modules;

  RigMaker(Dice dice, Set<Feature> features, int modules) {
    this.dice = dice;
    this.features = features;
    this.modules = modules;
  }

  /** How many voices the keys and the output are made for. */
  private int voices() {
    return Math.max(2, modules / MODULES_PER_VOICE);
  }

  /** The kinds and the modules, with cords without end. */
  RigBuilder make() {
    RigBuilder rig = kinds();
    List<String> all = new ArrayList<>(List.of("keys: keys"));
    List<String> kinds = kindsToPick();
    Map<String, Integer> count = new HashMap<>();
    List<String> must = wanted();
    for (int module = 0; module < modules - 2; module++) {
      String kind = module < must.size() ? must.get(module) : dice.one(kinds);
      all.add(kind + " " + count.merge(kind, 1, Integer::sum) + ": " + kind);
    }
    all.add("output: output");
    for (int from = 0; from < all.size(); from += ROW) {
      rig.row(all.subList(from, Math.min(all.size(), from + ROW)).toArray(new String[0]));
    }
    return rig;
  }

  /** What the features are about, in random order after the first oscillator. */
  private List<String> wanted() {
    List<String> wanted = new ArrayList<>();
    if (features.contains(Feature.MULTIPLES) || features.contains(Feature.CHAINS)) {
      wanted.addAll(List.of("oscillator", "multiple"));
    }
    if (features.contains(Feature.CHAINS)) {
      wanted.add("multiple");
    }
    if (features.contains(Feature.SIZES)) {
      wanted.add("small multiple");
    }
    if (features.contains(Feature.CLOSED)) {
      wanted.addAll(List.of("oscillator", "mixer"));
    }
    if (features.contains(Feature.JUMPERS) || wanted.isEmpty()) {
      wanted.add("filter");
    }
    List<String> all = new ArrayList<>(List.of("oscillator"));
    all.addAll(dice.shuffled(wanted));
    return all;
  }

  private List<String> kindsToPick() {
    List<String> kinds =
        new ArrayList<>(
            List.of(
                "oscillator",
                "oscillator",
                "oscillator",
                "filter",
                "filter",
                "amplifier",
                "envelope",
                "lfo",
                "mixer"));
    if (features.contains(Feature.MULTIPLES) || features.contains(Feature.CHAINS)) {
      kinds.add("multiple");
    }
    if (features.contains(Feature.SIZES)) {
      kinds.add("small multiple");
    }
    return kinds;
  }

  private RigBuilder kinds() {
    List<String> voiceJacks = new ArrayList<>();
    List<String> inputs = new ArrayList<>();
    for (int voice = 1; voice <= voices(); voice++) {
      voiceJacks.addAll(List.of("pitch " + voice, "gate " + voice));
      inputs.add("side " + voice);
    }
    return RigBuilder.rig()
        .kind(KEYS, k -> k.out(voiceJacks.toArray(new String[0])))
        .kind(
            "oscillator",
            k ->
                k.in("pitch x2", "fm")
                    .out("saw", "sine")
                    .knob("tune", -5, 5)
                    .flip("octave", "16", "8", "4"))
        .kind("lfo", k -> k.in("pitch").out("sine").knob("tune", -2, 5))
        .kind("filter", this::filter)
        .kind("amplifier", k -> k.in("audio", "level cv").out("out"))
        .kind("envelope", k -> k.in("gate").out("out").knob("decay", 0, 10))
        .kind("mixer", this::mixer)
        .kind("multiple", k -> k.taps(features.contains(Feature.CHAINS) ? 3 : 4))
        .kind("small multiple", k -> k.taps(3))
        .kind(OUTPUT, k -> k.in(inputs.toArray(new String[0])));
  }

  private KindBuilder filter(KindBuilder kind) {
    kind.in("audio", "cutoff cv").out("out").knob("cutoff", 0, 10);
    return features.contains(Feature.JUMPERS)
        ? kind.jumper("slope inside", "2-pole", "3-pole")
        : kind;
  }

  private KindBuilder mixer(KindBuilder kind) {
    kind.out("out");
    return features.contains(Feature.CLOSED) ? kind.channels(3) : kind.channels(3, Map.of());
  }

  /** How many multiples of the rig's largest a source with that many sinks takes. */
  static int linksFor(Rig rig, int sinks) {
    List<Integer> taps =
        rig.modules().stream().map(m -> m.kind().taps()).sorted((a, b) -> b - a).toList();
    int links = 1;
    while (links < taps.size()
        && taps.stream().limit(links).mapToInt(t -> t).sum() + 1 - 2 * links < sinks) {
      links++;
    }
    return links;
  }
}
