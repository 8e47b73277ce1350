package entracte.read;

import entracte.finding.Place;
import entracte.rig.Cord;
import entracte.rig.CordStock;
import entracte.rig.Rig;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Takes the plugged cords of a saved state out of the stock.
 *
 * <p>Cords without a length are served in order of the length they need, the longest first, each by
 * the shortest that is left and reaches. What reaches far reaches near, so the cords that could
 * serve one need could serve all later ones too, and no choice spoils another: if the stock can
 * serve all, this does.
 */
final class CordLengths {
  private final Rig rig;
  private final Notebook notes;
  private final Place place;
  private final TreeMap<Integer, Integer> left;

  /**
   * Takes cords from the stock of {@code rig}.
   *
   * @param place where to note that the stock does not suffice
   */
  CordLengths(Rig rig, Notebook notes, Place place) {
    this.rig = rig;
    this.notes = notes;
    this.place = place;
    this.left = new TreeMap<>(rig.cords().countByLengthCm());
  }

  /**
   * The length of each cord.
   *
   * @param written the lengths that are known, by the name of the cord's first jack
   */
  List<Integer> of(List<Cord> cords, Map<String, Integer> written) {
    Map<Cord, Integer> lengths = new HashMap<>();
    boolean matters = rig.cords().lengthMatters();
    for (Cord cord : cords) {
      Integer length = written.get(cord.source().toString());
      if (matters && length != null) {
        take(length, cord);
        lengths.put(cord, length);
      }
    }
    cords.stream()
        .filter(cord -> !lengths.containsKey(cord))
        .sorted(Comparator.comparing(this::need).reversed())
        .forEachOrdered(cord -> lengths.put(cord, shortest(cord)));
    return cords.stream().map(lengths::get).toList();
  }

  /** The length the cord needs; where no cord reaches, the longest, which must then have done. */
  private int need(Cord cord) {
    OptionalInt length = rig.cordLengthCm(cord.source().module(), cord.sink().module());
    return length.orElseGet(() -> left.isEmpty() ? CordStock.ANY_LENGTH : left.lastKey());
  }

  private int shortest(Cord cord) {
    int need = need(cord);
    int length =
        left.tailMap(need).entrySet().stream()
            .filter(e -> e.getValue() > 0)
            .map(Map.Entry::getKey)
            .findFirst()
            .orElse(need);
    take(length, cord);
    return length;
  }

  private void take(int length, Cord cord) {
    if (left.merge(length, -1, Integer::sum) < 0) {
      boolean matters = rig.cords().lengthMatters();
      notes.error(
          place,
          "the rig has no cord" + (matters ? " of " + length + " cm" : "") + " left for " + cord,
          "Is the stock in the rig's file right?");
    }
  }
}
