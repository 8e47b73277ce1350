package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Module;
import entracte.setlist.Sound;
import entracte.setlist.TunedTo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a song's patch wants tuned to what, by the modules that are cast. */
final class TuneWishes {
  private final Map<Module, TunedTo> wishes = new LinkedHashMap<>();
  private final Map<String, Module> byRole = new LinkedHashMap<>();

  TuneWishes(SongPlan song) {
    song.casting().forEach(cast -> byRole.put(cast.role(), cast.module()));
    for (CastAs cast : song.casting()) {
      Sound.of(cast.role(), song.song().patch().sound().tune())
          .flatMap(TunedTo::parse)
          .ifPresent(wish -> wishes.put(cast.module(), wish));
    }
  }

  Optional<TunedTo> of(Module module) {
    return Optional.ofNullable(wishes.get(module));
  }

  /** The module that this one is tuned against; empty if it stands by itself. */
  Optional<Module> reference(Module module) {
    return of(module)
        .flatMap(
            wish ->
                wish instanceof TunedTo.From from
                    ? Optional.ofNullable(byRole.get(from.role()))
                    : Optional.empty());
  }

  /** {@code to a pure fifth above osc 1}, {@code to E2}; empty if nothing is wished. */
  String words(Module module) {
    Optional<TunedTo> wish = of(module);
    if (wish.isPresent() && wish.get() instanceof TunedTo.At at) {
      return "to " + at.note().name();
    }
    return reference(module)
        .map(
            reference ->
                wish.get() instanceof TunedTo.From from
                    ? "to " + against(from) + " " + reference.name()
                    : "")
        .orElse("");
  }

  /** The pitch alone, however it is written: {@code 5:4} is a pure major third. */
  String pitch(Module module) {
    return of(module)
        .map(
            wish ->
                wish instanceof TunedTo.From from
                    ? Pitch.rounded(from.cents())
                        + " "
                        + reference(module).map(Module::name).orElse("")
                    : words(module))
        .orElse("");
  }

  /** {@code a pure fifth above}, {@code unison with}. */
  static String against(TunedTo.From from) {
    boolean same = from.distance().cents() == 0;
    return same ? "unison with" : from.distance().words() + (from.below() ? " below" : " above");
  }

  /**
   * The modules that the ear sees to, each after what it is tuned against: those with a cord in a
   * pitch input or with a wish, as far as they are heard or others are tuned against them.
   */
  List<Module> tuned(SongPlan song, PitchPaths paths, Comparator<Module> order) {
    Audible audible = new Audible(song);
    Set<Module> needed = new HashSet<>();
    List<Module> cast = song.casting().stream().map(CastAs::module).toList();
    cast.stream().filter(audible::hears).forEach(module -> needed.addAll(chain(module)));
    List<Module> modules =
        cast.stream()
            .filter(needed::contains)
            .filter(module -> !paths.into(module).isEmpty() || wishes.containsKey(module))
            .sorted(order)
            .toList();
    return referencesFirst(modules);
  }

  /** The same modules in the same order, but none before what it is tuned against. */
  private List<Module> referencesFirst(List<Module> modules) {
    Set<Module> ordered = new LinkedHashSet<>();
    modules.forEach(module -> ordered.addAll(chain(module)));
    return ordered.stream().filter(modules::contains).toList();
  }

  /** The last reference first, the module itself last. */
  private List<Module> chain(Module module) {
    List<Module> chain = new ArrayList<>();
    Optional<Module> here = Optional.of(module);
    while (here.isPresent() && !chain.contains(here.get())) {
      chain.add(0, here.get());
      here = reference(here.get());
    }
    return chain;
  }
}
