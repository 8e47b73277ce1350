package entracte.finding;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Remembers where each piece of the model was written. The model itself knows nothing of files, so
 * that a rig made by a test and one read from YAML are the same thing; the reader notes a place for
 * every piece it makes, and pieces are told apart by identity, because two equal settings may stand
 * on two lines.
 */
public final class Places {
  private final Map<Object, Place> places = new IdentityHashMap<>();
  private final Map<Object, Map<String, Place>> parts = new IdentityHashMap<>();
  private final Place fallback;

  /** Pieces without a place of their own are said to stand at {@code fallback}. */
  public Places(Place fallback) {
    this.fallback = fallback;
  }

  /** Notes where {@code piece} stands and hands it back. */
  public <T> T note(T piece, Place place) {
    places.put(piece, place);
    return piece;
  }

  /** Notes where a part of {@code piece} stands that is no object of its own, such as a number. */
  public void notePart(Object piece, String part, Place place) {
    parts.computeIfAbsent(piece, p -> new HashMap<>()).put(part, place);
  }

  /** Where that part of {@code piece} stands; if nobody noted it, where the piece does. */
  public Place ofPart(Object piece, String part) {
    return parts.getOrDefault(piece, Map.of()).getOrDefault(part, of(piece));
  }

  /** Where {@code piece} stands. */
  public Place of(Object piece) {
    return places.getOrDefault(piece, fallback);
  }

  /** Where {@code piece} stands; if nobody noted it, where the {@code whole} that holds it does. */
  public Place of(Object piece, Object whole) {
    return places.containsKey(piece) ? places.get(piece) : of(whole);
  }
}
