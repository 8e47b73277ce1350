package entracte.plan.oracle;

import com.google.ortools.sat.Literal;
import entracte.check.Part.CastRole;
import entracte.check.Part.Strip;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers interchangeable modules, channels, equal jacks and taps by first use. Modules are
 * interchangeable if they are of one kind, every role takes all of them or none, the start touches
 * neither and lengths do not matter; strips of a module if no patch gives one a number and the
 * start does not touch the module.
 */
final class Symmetry {
  private final Cp cp;
  private final Universe universe;
  private final List<SongVars> songs;

  Symmetry(Cp cp, Universe universe, List<SongVars> songs) {
    this.cp = cp;
    this.universe = universe;
    this.songs = songs;
  }

  void orderAll() {
    if (!universe.rig().cords().lengthMatters()) {
      orderModules();
    }
    for (Module module : universe.rig().modules()) {
      for (Group group : module.kind().groups()) {
        if (group.count() > 1 && isFree(module, group)) {
          orderStrips(module, group);
        }
      }
    }
  }

  private void orderModules() {
    Map<List<Object>, List<Module>> classes = new LinkedHashMap<>();
    for (Module module : universe.rig().modules()) {
      if (!universe.touchedAtStart(module)) {
        List<Object> sign = new ArrayList<>(List.of(module.kind().name()));
        songs.forEach(
            song ->
                song.part.roles().forEach(role -> sign.add(role.candidates().contains(module))));
        classes.computeIfAbsent(sign, s -> new ArrayList<>()).add(module);
      }
    }
    List<List<Map<Module, Literal>>> users = songs.stream().map(SongVars::everyUser).toList();
    classes.values().forEach(equal -> new FirstUse<>(cp, equal).order(users));
  }

  private boolean isFree(Module module, Group group) {
    return !universe.touchedAtStart(module)
        && songs.stream()
            .flatMap(song -> song.part.roles().stream())
            .filter(role -> role.candidates().contains(module))
            .flatMap(role -> role.channels().stream())
            .noneMatch(strip -> strip.number() != 0 && isIn(strip, group));
  }

  private static boolean isIn(Strip strip, Group group) {
    return strip.isChannel()
        ? group.form() == Group.Form.CHANNELS
        : group.name().equals(strip.jack());
  }

  private void orderStrips(Module module, Group group) {
    List<Spot> spots = new ArrayList<>();
    for (int number = 1; number <= group.count(); number++) {
      spots.add(new Spot(module, group, number));
    }
    List<List<Map<Spot, Literal>>> users = new ArrayList<>();
    for (SongVars song : songs) {
      List<Map<Spot, Literal>> ofSong = new ArrayList<>(namedStrips(song, group));
      song.chains.forEach(chain -> chain.ifPresent(c -> ofSong.addAll(tapsOf(c, group))));
      users.add(ofSong);
    }
    new FirstUse<>(cp, spots).order(users);
  }

  private static List<Map<Spot, Literal>> namedStrips(SongVars song, Group group) {
    List<Map<Spot, Literal>> named = new ArrayList<>();
    for (int role = 0; role < song.strips.size(); role++) {
      CastRole cast = song.part.roles().get(role);
      for (int strip = 0; strip < cast.channels().size(); strip++) {
        if (isIn(cast.channels().get(strip), group)) {
          named.add(song.strips.get(role).get(strip));
        }
      }
    }
    return named;
  }

  private static List<Map<Spot, Literal>> tapsOf(Chain chain, Group group) {
    boolean taps = group.jacks().stream().anyMatch(j -> j.direction() == Direction.TAP);
    return taps ? chain.everyTap().stream().map(Symmetry::bySpot).toList() : List.of();
  }

  private static Map<Spot, Literal> bySpot(Map<Socket, Literal> taps) {
    Map<Spot, Literal> spots = new LinkedHashMap<>();
    taps.forEach(
        (socket, is) -> spots.put(new Spot(socket.module(), socket.group(), socket.number()), is));
    return spots;
  }
}
