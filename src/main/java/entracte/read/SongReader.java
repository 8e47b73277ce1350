package entracte.read;

import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.setlist.Patch;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one song of a set. */
final class SongReader {
  static final List<String> KEYS =
      List.of(
          "song",
          "patch",
          "settings",
          "gap",
          "gear",
          "key",
          "tempo",
          "starts",
          "notes",
          "length",
          "encore",
          "talk",
          "keep",
          "listen for",
          "sections",
          "first",
          "last",
          "place",
          "before",
          "after");

  /** What the set says of the gaps of all its songs. */
  record Gap(OptionalDouble seconds, Optional<Leaf> written) {}

  private final Notebook notes;
  private final Values values;
  private final Shapes shapes;
  private final PatchStore patches;
  private final OrderReader order;
  private final FileName set;

  SongReader(FileName set, PatchStore patches, OrderReader order, Notebook notes) {
    this.set = set;
    this.patches = patches;
    this.order = order;
    this.notes = notes;
    this.values = new Values(notes);
    this.shapes = new Shapes(notes);
  }

  /**
   * Reads a song.
   *
   * @param number from 1, for a song without a name
   * @param gap what the set says for songs that do not
   */
  Song read(Table table, int number, Gap gap) {
    Fields fields = new Fields(table, KEYS, notes);
    String name = name(fields, number);
    Optional<Patch> patch = patch(fields, name);
    Optional<Leaf> gapLeaf = fields.leaf("gap");
    OptionalDouble own = stretch(gapLeaf);
    order.read(fields, name);
    Song song =
        new Song(
            name,
            patch.orElse(new Patch(name, List.of(), List.of(), List.of())),
            // Settings of a patch that cannot be read would each be called a mistake.
            patch.isEmpty() ? List.of() : new SettingsReader(notes).read(fields.lines("settings")),
            own.isPresent() ? own : gap.seconds(),
            new GearCueReader(notes).read(fields.lines("gear")),
            card(fields),
            running(fields),
            sections(fields));
    gapLeaf.or(gap::written).ifPresent(leaf -> notes.notePart(song, "gap", leaf.place()));
    return notes.note(song, fields.entry("song").map(e -> e.key().place()).orElse(table.place()));
  }

  private String name(Fields fields, int number) {
    if (!fields.has("song")) {
      notes.error(
          fields.place(), "song " + number + " has no name", "Begin it with a line song: NAME.");
    }
    Optional<Leaf> written = fields.leaf("song");
    written
        .filter(leaf -> leaf.name().isEmpty())
        .ifPresent(leaf -> notes.slip(leaf.place(), "this name is empty", "Give the song a name."));
    return written.map(Leaf::name).filter(n -> !n.isEmpty()).orElse("song " + number);
  }

  private Optional<Patch> patch(Fields fields, String name) {
    if (!fields.has("patch")) {
      notes.error(
          fields.place(),
          "the song " + Names.quote(name) + " has no patch",
          "Add a line patch: and the patch's file.");
    }
    return fields.leaf("patch").flatMap(l -> patches.patch(l, set));
  }

  private OptionalDouble stretch(Optional<Leaf> leaf) {
    return leaf.map(values::stretch).orElse(OptionalDouble.empty());
  }

  private Song.Running running(Fields fields) {
    OptionalDouble talk = stretch(fields.leaf("talk"));
    return new Song.Running(talk.orElse(0), fields.leaf("keep").map(values::yes).orElse(false));
  }

  private List<Song.Section> sections(Fields fields) {
    List<Song.Section> sections = new ArrayList<>();
    for (Tree tree :
        fields.entry("sections").flatMap(shapes::items).map(Tree.Items::list).orElse(List.of())) {
      if (tree.table().isPresent()) {
        sections.add(section(tree.table().get()));
      } else {
        notes.error(
            tree.place(),
            "a section is names with values, not " + tree.what(),
            "Begin it with a line section: NAME.");
      }
    }
    return sections;
  }

  private Song.Section section(Table table) {
    Fields fields = new Fields(table, List.of("section", "gear"), notes);
    if (!fields.has("section")) {
      notes.error(fields.place(), "this section has no name", "Begin it with section: NAME.");
    }
    String name = fields.leaf("section").map(Leaf::name).orElse("");
    return new Song.Section(name, new GearCueReader(notes).read(fields.lines("gear")));
  }

  /** A tempo may be a word; a figure is beats per minute. */
  private String tempo(Leaf leaf) {
    OptionalDouble beats = Amounts.decimal(leaf.text());
    if (beats.isPresent() && beats.getAsDouble() <= 0) {
      notes.slip(
          leaf.place(),
          Names.quote(leaf.text()) + " is not a tempo",
          "Write beats per minute, like 92, or a word.");
    }
    return leaf.name();
  }

  private Song.Card card(Fields fields) {
    return new Song.Card(
        fields.leaf("key").map(Leaf::name),
        fields.leaf("tempo").map(this::tempo),
        fields.leaf("starts").map(Leaf::name),
        fields.text("notes"),
        stretch(fields.leaf("length")),
        fields.leaf("encore").map(values::yes).orElse(false),
        fields.words("listen for"));
  }
}
