package entracte.plan.sample;

import entracte.check.PlayableSet;
import entracte.check.SetBuilder;
import entracte.plan.Start;
import entracte.plan.sample.PatchMaker.Made;
import entracte.rig.Cord;
import entracte.rig.Rig;
import entracte.setlist.Patch;
import entracte.setlist.SetList;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Random sets that look like a musician's: voices from an oscillator by way of mixers, filters and
 * amplifiers to the output, with whatever bends them. The same arguments give the same set. Every
 * song is made around modules and cords that could play it, so each set can be planned.
 */
public final class RandomSets {
  private RandomSets() {}

  /** A set with exactly these features. */
  public static Sample make(long seed, int songs, int modules, Set<Feature> features) {
    Dice dice = new Dice(seed);
    Rig loose = new RigMaker(dice.split(), features, modules).make().build();
    List<Made> made = new ArrayList<>();
    List<Song> all = songs(dice.split(), features, loose, songs, made);
    List<List<Cord>> cords = made.stream().map(Made::cords).toList();
    Rig rig = new StockMaker(dice.split(), features, loose).with(cords);
    PlayableSet set =
        SetBuilder.playable(
            new SetList("random set", rig, all, !features.contains(Feature.NO_PARKING)));
    Start start = new StartMaker(dice.split(), features, rig).make(cords);
    String label = "seed %d, %d songs, %d modules, %s".formatted(seed, songs, modules, features);
    return new Sample(label, set, start);
  }

  /** A set with features as the seed will have it. */
  public static Sample any(long seed, int songs, int modules) {
    Dice dice = new Dice(~seed);
    Set<Feature> features = EnumSet.noneOf(Feature.class);
    for (Feature feature : Feature.values()) {
      if (dice.chance(feature == Feature.NO_PARKING ? 0.1 : 0.4)) {
        features.add(feature);
      }
    }
    return make(seed, songs, modules, features);
  }

  private static List<Song> songs(
      Dice dice, Set<Feature> features, Rig rig, int count, List<Made> made) {
    SettingsMaker settings = new SettingsMaker(dice, features, rig);
    List<Song> songs = new ArrayList<>();
    for (int song = 1; song <= count; song++) {
      Dice own = dice.split();
      boolean returns = features.contains(Feature.RETURNING) && song > 1 && own.chance(0.5);
      if (returns) {
        Patch patch = own.one(made).patch();
        songs.add(song("song " + song, patch, settings.changed(patch, own)));
      } else {
        made.add(new PatchMaker(own, features, rig).make("patch " + song, settings));
        songs.add(song("song " + song, made.get(made.size() - 1).patch(), List.of()));
      }
    }
    return songs;
  }

  private static Song song(String name, Patch patch, List<Setting> own) {
    return new Song(name, patch, own, OptionalDouble.empty(), List.of(), Song.Card.blank());
  }
}
