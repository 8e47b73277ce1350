package entracte.cue;

import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The course of a plan, made quick to ask: who needs which cord and which knob, and when. Songs
 * count from 0. Jacks and controls are looked up by their names, which no two of a rig share.
 */
final class Course {
  private final Rig rig;
  private final List<OneSong> songs = new ArrayList<>();

  private record OneSong(
      SongPlan plan,
      Map<Module, String> roles,
      Set<String> required,
      Set<String> plugged,
      Map<String, PluggedCord> users,
      NamedSettings settings) {}

  Course(Plan plan) {
    rig = plan.setList().rig();
    plan.songs().forEach(song -> songs.add(learn(song)));
  }

  private static OneSong learn(SongPlan song) {
    Map<Module, String> roles = new HashMap<>();
    for (CastAs cast : song.casting()) {
      roles.put(cast.module(), cast.role());
    }
    Set<String> required = new HashSet<>();
    Map<String, PluggedCord> users = new HashMap<>();
    for (PluggedCord cord : song.required()) {
      required.add(key(cord.cord()));
      use(users, cord);
    }
    Set<String> plugged = new HashSet<>(required);
    for (PluggedCord cord : song.parked()) {
      plugged.add(key(cord.cord()));
      use(users, cord);
    }
    return new OneSong(song, roles, required, plugged, users, NamedSettings.of(song));
  }

  private static void use(Map<String, PluggedCord> users, PluggedCord cord) {
    users.put(cord.cord().source().toString(), cord);
    users.put(cord.cord().sink().toString(), cord);
  }

  /** A piece of wire has no direction. */
  private static String key(Cord cord) {
    String a = cord.source().toString();
    String b = cord.sink().toString();
    return a.compareTo(b) < 0 ? a + "\n" + b : b + "\n" + a;
  }

  Rig rig() {
    return rig;
  }

  /** How many songs there are. */
  int songs() {
    return songs.size();
  }

  SongPlan song(int song) {
    return songs.get(song).plan();
  }

  String title(int song) {
    return song(song).song().name();
  }

  /** How a reason begins that speaks of a later song. */
  String early(int song) {
    return "early, for " + numbered(song) + ": ";
  }

  /** {@code song 2 (Dawn)}. */
  String numbered(int song) {
    return "song " + (song + 1) + " (" + title(song) + ")";
  }

  boolean isRequired(int song, Cord cord) {
    return songs.get(song).required().contains(key(cord));
  }

  /** Whether the cord hangs there during the song, needed or not. */
  boolean isPlugged(int song, Cord cord) {
    return songs.get(song).plugged().contains(key(cord));
  }

  /** The first song from {@code from} on that needs the cord while it still hangs there. */
  OptionalInt needed(int from, Cord cord) {
    for (int song = from; song < songs.size(); song++) {
      if (isRequired(song, cord)) {
        return OptionalInt.of(song);
      }
      if (!songs.get(song).plugged().contains(key(cord))) {
        return OptionalInt.empty();
      }
    }
    return OptionalInt.empty();
  }

  NamedSettings settings(int song) {
    return songs.get(song).settings();
  }

  /** The role that a module plays; empty if it is idle. */
  Optional<String> role(int song, Module module) {
    return Optional.ofNullable(songs.get(song).roles().get(module));
  }

  /** Whether the module has no role in the songs from {@code from} up to {@code before}. */
  boolean idle(int from, int before, Module module) {
    for (int song = from; song < before; song++) {
      if (role(song, module).isPresent()) {
        return false;
      }
    }
    return true;
  }

  /** The cord that has a plug in {@code socket} during the song. */
  Optional<PluggedCord> user(int song, Socket socket) {
    return Optional.ofNullable(songs.get(song).users().get(socket.toString()));
  }
}
