package entracte.plan.sample;

import entracte.check.SetBuilder;
import entracte.plan.Start;
import entracte.plan.sample.PatchMaker.Made;
import entracte.plan.sample.Player.Hole;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.setlist.Patch;
import entracte.setlist.Role;
import entracte.setlist.SetList;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Random sets in which nearly every module plays in every song and most inputs are fed: far harder
 * to plan than {@link RandomSets}, and than what musicians play, whose songs share a core. One song
 * in four comes back to an earlier patch with some knobs elsewhere. The same arguments give the
 * same set.
 */
public final class FullSets {
  private static final String TONE = "oscillator";
  private static final double PLAYS = 0.85;
  private static final double IS_FED = 0.6;
  private static final double COMES_BACK = 0.25;
  private static final Set<Feature> ALWAYS =
      EnumSet.of(Feature.TOLERANCES, Feature.MULTIPLES, Feature.JUMPERS, Feature.CLOSED);

  private final Dice dice;
  private final Rig rig;
  private final SettingsMaker settings;
  private final List<Made> made = new ArrayList<>();

  private FullSets(Dice dice, Rig rig, Set<Feature> features) {
    this.dice = dice;
    this.rig = rig;
    settings = new SettingsMaker(dice.split(), features, rig);
  }

  /** A set with a loose stock of cords. */
  public static Sample loose(long seed, int songs, int modules) {
    return make(seed, songs, modules, false);
  }

  /** A set with hardly more cords than its fullest song needs. */
  public static Sample tight(long seed, int songs, int modules) {
    return make(seed, songs, modules, true);
  }

  private static Sample make(long seed, int songs, int modules, boolean tight) {
    Dice dice = new Dice(seed * 7919 + songs * 31L + modules);
    Set<Feature> features = EnumSet.copyOf(ALWAYS);
    if (tight) {
      features.add(Feature.TIGHT);
    }
    Rig loose = new RigMaker(dice.split(), features, modules).make().build();
    FullSets maker = new FullSets(dice.split(), loose, features);
    List<Song> all = new ArrayList<>();
    for (int song = 1; song <= songs; song++) {
      all.add(maker.song(song));
    }
    List<List<Cord>> cords = maker.made.stream().map(Made::cords).toList();
    Rig rig = new StockMaker(dice.split(), features, loose).with(cords);
    String label =
        "%s full set, seed %d, %d songs, %d modules"
            .formatted(tight ? "tight" : "loose", seed, songs, modules);
    return new Sample(
        label, SetBuilder.playable(new SetList("full set", rig, all, true)), Start.bare());
  }

  private Song song(int number) {
    Dice own = dice.split();
    if (!made.isEmpty() && own.chance(COMES_BACK)) {
      Patch patch = own.one(made).patch();
      return song(number, patch, settings.changed(patch, own));
    }
    made.add(patch(own, "patch " + number));
    return song(number, made.get(made.size() - 1).patch(), List.of());
  }

  private static Song song(int number, Patch patch, List<Setting> changed) {
    return new Song(
        "song " + number, patch, changed, OptionalDouble.empty(), List.of(), Song.Card.blank());
  }

  private Made patch(Dice own, String name) {
    List<Module> multiples =
        new ArrayList<>(rig.modules().stream().filter(m -> m.kind().taps() > 0).toList());
    multiples.sort(Comparator.comparing(m -> -m.kind().taps()));
    Wiring wiring = new Wiring(rig, multiples);
    List<Player> players = new ArrayList<>();
    List<Player> feeding = new ArrayList<>();
    List<Role> roles = new ArrayList<>();
    for (Module module : own.shuffled(rig.modules())) {
      String kind = module.kind().name();
      if (kind.equals(RigMaker.KEYS)) {
        feeding.add(new Player(kind, module, ""));
      } else if (module.kind().taps() == 0 && (isNeeded(kind, players) || own.chance(PLAYS))) {
        players.add(player(module, players.size(), roles));
      }
    }
    feeding.addAll(players.stream().filter(p -> !p.outs().isEmpty()).toList());
    sound(players, wiring);
    players.forEach(player -> feed(player, feeding, wiring, own));
    Set<String> wired = wiring.names();
    roles.removeIf(role -> !wired.contains(role.name()));
    List<Player> heard =
        players.stream()
            .filter(p -> roles.stream().anyMatch(r -> r.name().equals(p.role())))
            .toList();
    return new Made(
        new Patch(name, roles, wiring.connections(), settings.of(heard, own)), wiring.cords());
  }

  /** Every song has its output, and an oscillator to be heard there. */
  private static boolean isNeeded(String kind, List<Player> players) {
    return kind.equals(RigMaker.OUTPUT)
        || (kind.equals(TONE) && players.stream().noneMatch(player -> isOf(TONE, player)));
  }

  private static boolean isOf(String kind, Player player) {
    return player.module().kind().name().equals(kind);
  }

  private static void sound(List<Player> players, Wiring wiring) {
    Player tone = players.stream().filter(player -> isOf(TONE, player)).findFirst().orElseThrow();
    Player output =
        players.stream().filter(player -> isOf(RigMaker.OUTPUT, player)).findFirst().orElseThrow();
    Hole in = output.freeIns().get(0);
    wiring.connect(tone.out(), in);
    output.free().remove(in);
  }

  private static Player player(Module module, int number, List<Role> roles) {
    String kind = module.kind().name();
    if (kind.equals(RigMaker.OUTPUT)) {
      return new Player(kind, module, "");
    }
    roles.add(new Role("role " + number, List.of(kind)));
    return new Player("role " + number, module, "abc");
  }

  /** Feeds the first input, and others as chance will have it, from other modules. */
  private static void feed(Player player, List<Player> feeding, Wiring wiring, Dice dice) {
    List<Hole> ins = player.freeIns();
    for (int i = 0; i < ins.size(); i++) {
      Player from = dice.one(feeding);
      if (from != player
          && (i == 0 || dice.chance(IS_FED))
          && wiring.connect(dice.one(from.outs()), ins.get(i))) {
        player.free().remove(ins.get(i));
      }
    }
  }
}
