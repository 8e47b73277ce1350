package entracte.read;

import entracte.finding.Place;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.setlist.Patch;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every patch that a set uses, each file read once. */
final class PatchStore {
  /** More steps than anyone can follow, and few enough to follow by recursion. */
  static final int LONGEST_CHAIN = 50;

  private final Notebook notes;
  private final SourceFiles files;
  private final PatchReader reader;
  private final Map<Path, Optional<Patch>> known = new HashMap<>();

  /** The same by the path as written, so that a file system is not asked for each song. */
  private final Map<Path, Optional<Patch>> byPath = new HashMap<>();

  /** The files that are being read, each like the next. */
  private final List<FileName> chain = new ArrayList<>();

  PatchStore(SourceFiles files, Notebook notes) {
    this.files = files;
    this.notes = notes;
    this.reader = new PatchReader(notes);
  }

  /** The patch that {@code from} names; empty if it cannot be read, which has then been noted. */
  Optional<Patch> patch(Leaf written, FileName from) {
    return files.named(written, from).flatMap(file -> patch(file, written.place()));
  }

  private Optional<Patch> patch(FileName file, Place asked) {
    if (byPath.containsKey(file.path())) {
      return byPath.get(file.path());
    }
    // Every song that names a missing file is at fault; a bad file is, once, itself.
    if (!files.isThere(file, asked)) {
      return Optional.empty();
    }
    Path identity = file.identity();
    if (!known.containsKey(identity)) {
      known.put(identity, read(file, asked));
    }
    byPath.put(file.path(), known.get(identity));
    return known.get(identity);
  }

  private Optional<Patch> read(FileName file, Place asked) {
    chain.add(file);
    int losses = notes.losses();
    Optional<Patch> patch =
        files.table(file, asked, "patch").flatMap(table -> read(table, file, losses));
    chain.remove(chain.size() - 1);
    return patch;
  }

  private Optional<Patch> read(Table table, FileName file, int losses) {
    Fields fields = PatchReader.fields(table, notes);
    Optional<Leaf> named = fields.leaf("like");
    int own = notes.losses() - losses;
    Optional<Patch> base = named.flatMap(leaf -> like(leaf, file));
    Optional<Patch> patch = reader.read(fields, file, base, notes.losses() - own);
    // Without the patch it is like, most of what it says would be called wrong.
    return named.isPresent() && base.isEmpty() ? Optional.empty() : patch;
  }

  private Optional<Patch> like(Leaf written, FileName from) {
    Optional<FileName> base = files.named(written, from);
    if (base.isEmpty()) {
      return Optional.empty();
    }
    Path identity = base.get().identity();
    List<String> shown = new ArrayList<>();
    for (FileName file : chain) {
      if (!shown.isEmpty() || file.identity().equals(identity)) {
        shown.add(file.shown());
      }
    }
    if (!shown.isEmpty()) {
      shown.add(shown.get(0));
      notes.error(
          written.place(),
          "a patch is like itself: " + String.join(" is like ", shown),
          "Let one of them stand on its own.");
      return Optional.empty();
    }
    if (chain.size() > LONGEST_CHAIN) {
      notes.error(
          written.place(),
          "more than " + LONGEST_CHAIN + " patches are each like the next",
          "Let this one stand on its own.");
      return Optional.empty();
    }
    return patch(base.get(), written.place());
  }
}
