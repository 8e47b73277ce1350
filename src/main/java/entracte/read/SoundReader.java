package entracte.read;

import entracte.read.Tree.Entry;
import entracte.setlist.Patch;
import entracte.setlist.Sound;
import entracte.setlist.Sound.Wish;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what a patch says for the ear, on top of the one it is like. */
final class SoundReader {
  static final List<String> KEYS = List.of("tune", "scale", "drive", "listen for");

  private final Notebook notes;
  private final Shapes shapes;

  SoundReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
  }

  Sound read(Fields fields, Optional<Patch> like) {
    Sound base = like.map(Patch::sound).orElse(Sound.unsaid());
    return new Sound(
        wishes(fields.lines("tune"), base.tune()),
        wishes(fields.lines("scale"), base.scale()),
        wishes(fields.lines("drive"), base.drive()),
        fields.words("listen for").or(base::listenFor));
  }

  private List<Wish> wishes(List<Entry> lines, List<Wish> inherited) {
    Map<String, Wish> wishes = new LinkedHashMap<>();
    inherited.forEach(wish -> wishes.put(wish.role(), wish));
    for (Entry line : lines) {
      shapes
          .leaf(line)
          .map(leaf -> notes.note(new Wish(line.name(), leaf.name()), leaf.place()))
          .ifPresent(wish -> wishes.put(wish.role(), wish));
    }
    return List.copyOf(wishes.values());
  }
}
