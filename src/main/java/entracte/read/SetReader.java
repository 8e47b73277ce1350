package entracte.read;

import entracte.finding.Place;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.Rig;
import entracte.setlist.PitchStandard;
import entracte.setlist.SetList;
import entracte.setlist.Slot;
import entracte.setlist.Song;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a set with its rig and its patches. */
public final class SetReader {
  /** The file that makes a folder a set. */
  public static final String SET_FILE = "set.yaml";

  static final List<String> KEYS =
      List.of(
          "set",
          "rig",
          "gap",
          "park",
          "slot",
          "reserve",
          "fallback",
          "drone",
          "together",
          "apart",
          "songs",
          "A4",
          "tune on");

  /** Wider than all that was ever in use. */
  private static final int LOWEST_A4_HZ = 380;

  private static final int HIGHEST_A4_HZ = 480;

  /** A year of nights; the planner keeps something for every two songs. */
  private static final int MOST_SONGS = 1000;

  private final FileName file;
  private final Notebook notes;
  private final SourceFiles files;
  private final Values values;
  private final Shapes shapes;
  private final PatchStore patches;

  private SetReader(FileName file) {
    this.file = file;
    this.notes = new Notebook(file.wholeFile());
    this.files = new SourceFiles(notes);
    this.values = new Values(notes);
    this.shapes = new Shapes(notes);
    this.patches = new PatchStore(files, notes);
  }

  /**
   * Reads a set.
   *
   * @param fileOrFolder the set's file, or the folder that holds its {@code set.yaml}
   * @return what could be read, and every mistake; nothing in the files makes this throw
   */
  public static ReadSet read(Path fileOrFolder) {
    SetReader reader = new SetReader(fileOf(fileOrFolder));
    Optional<SetList> set = reader.read();
    return new ReadSet(set, reader.notes.places(), reader.notes.findings(), reader.files.asked());
  }

  /** The set's file. */
  static FileName fileOf(Path fileOrFolder) {
    boolean folder = java.nio.file.Files.isDirectory(fileOrFolder);
    return FileName.of(folder ? fileOrFolder.resolve(SET_FILE) : fileOrFolder);
  }

  private Optional<SetList> read() {
    Optional<Table> table = files.table(file, file.wholeFile(), "set");
    if (table.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = new Fields(table.get(), KEYS, notes);
    String name = fields.title("set", file);
    Optional<Leaf> gapLeaf = fields.leaf("gap");
    OptionalDouble seconds = gapLeaf.map(values::stretch).orElse(OptionalDouble.empty());
    SongReader.Gap gap = new SongReader.Gap(seconds, gapLeaf);
    boolean parking = fields.leaf("park").map(values::yes).orElse(true);
    Slot slot = slot(fields);
    Optional<String> fallback = fields.leaf("fallback").map(Leaf::name);
    PitchStandard pitch = pitch(fields);
    Optional<Rig> rig = rig(fields);
    OrderReader order = new OrderReader(notes);
    order.read(fields);
    Optional<List<Song>> songs = songs(fields, gap, order);
    Optional<Song> drone = fields.leaf("drone").flatMap(this::drone);
    return rig.flatMap(
            r ->
                songs.map(
                    s ->
                        new SetList(
                            name, r, s, parking, slot, fallback, order.rules(), drone, pitch)))
        .map(set -> notes.note(set, fields.place()));
  }

  private Slot slot(Fields fields) {
    OptionalDouble reserve =
        fields.leaf("reserve").map(values::stretch).orElse(OptionalDouble.empty());
    Slot slot =
        new Slot(
            fields.leaf("slot").map(values::stretch).orElse(OptionalDouble.empty()),
            reserve.orElse(0));
    fields.leaf("reserve").ifPresent(leaf -> notes.notePart(slot, "reserve", leaf.place()));
    return notes.note(slot, fields.leaf("slot").map(Leaf::place).orElse(fields.place()));
  }

  private PitchStandard pitch(Fields fields) {
    PitchStandard usual = PitchStandard.usual();
    OptionalDouble a4 =
        fields
            .leaf("A4")
            .map(leaf -> values.figure(leaf, "tuning of A4", LOWEST_A4_HZ, HIGHEST_A4_HZ))
            .orElse(OptionalDouble.empty());
    return new PitchStandard(
        a4.orElse(usual.a4Hz()),
        fields.leaf("tune on").flatMap(values::note).orElse(usual.tuneOn()));
  }

  private Optional<Rig> rig(Fields fields) {
    if (!fields.has("rig")) {
      notes.error(fields.place(), "this set names no rig", "Add a line rig: and the rig's file.");
    }
    Optional<Leaf> written = fields.leaf("rig");
    Optional<FileName> rigFile = written.flatMap(l -> files.named(l, file));
    Place asked = written.map(Leaf::place).orElse(fields.place());
    return rigFile.flatMap(named -> new RigReader(files, notes).read(named, asked));
  }

  private Optional<Song> drone(Leaf written) {
    return patches
        .patch(written, file)
        .map(
            patch ->
                notes.note(
                    new Song(
                        "Drone",
                        patch,
                        List.of(),
                        OptionalDouble.empty(),
                        List.of(),
                        Song.Card.blank()),
                    written.place()));
  }

  /**
   * The songs; none at all if they cannot be read or are too many, an empty list if the set has
   * none.
   */
  private Optional<List<Song>> songs(Fields fields, SongReader.Gap gap, OrderReader order) {
    Optional<Entry> entry = fields.entry("songs");
    if (entry.isEmpty()) {
      return Optional.of(List.of());
    }
    List<Tree> written = shapes.items(entry.get()).map(Tree.Items::list).orElse(List.of());
    if (written.size() > MOST_SONGS) {
      notes.error(
          written.get(MOST_SONGS).place(),
          "the set has " + written.size() + " songs; " + MOST_SONGS + " can be planned",
          "Make a set of each night; sets may share their rig and their patches.");
      return Optional.empty();
    }
    SongReader reader = new SongReader(file, patches, order, notes);
    List<Song> songs = new ArrayList<>();
    int number = 0;
    for (Tree tree : written) {
      number++;
      if (tree.table().isPresent()) {
        songs.add(reader.read(tree.table().get(), number, gap));
      } else {
        notes.error(
            tree.place(),
            "song " + number + " is names with values, not " + tree.what(),
            "Begin it with a line song: NAME.");
      }
    }
    boolean allBroken = songs.isEmpty() && (number > 0 || entry.get().value().items().isEmpty());
    return allBroken ? Optional.empty() : Optional.of(songs);
  }
}
