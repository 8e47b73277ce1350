package entracte.plan.sample;

import entracte.rig.Cord;
import entracte.rig.CordStock;
import entracte.rig.Rig;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Counts out cords: enough for every song as it was made, and few or many beyond. */
final class StockMaker {
  private static final List<Integer> LENGTHS_CM = List.of(45, 90, 600);

  private final Dice dice;
  private final Set<Feature> features;
  private final Rig rig;

  StockMaker(Dice dice, Set<Feature> features, Rig rig) {
    this.dice = dice;
    this.features = features;
    this.rig = rig;
  }

  Rig with(List<List<Cord>> songs) {
    CordStock stock =
        features.contains(Feature.LENGTHS)
            ? byLength(songs)
            : CordStock.ofAnyLength(songs.stream().mapToInt(List::size).max().orElse(0) + spare());
    return rigWith(stock);
  }

  private Rig rigWith(CordStock stock) {
    return new Rig(
        rig.name(),
        rig.kinds(),
        rig.rows(),
        stock,
        rig.rowHeightCm(),
        rig.gear(),
        rig.footSwitch());
  }

  private int spare() {
    return features.contains(Feature.TIGHT) ? dice.below(2) : 4 + dice.below(8);
  }

  private CordStock byLength(List<List<Cord>> songs) {
    Map<Integer, Integer> all = new TreeMap<>();
    LENGTHS_CM.forEach(length -> all.put(length, 1));
    Rig ruler = rigWith(new CordStock(new TreeMap<>(all)));
    Map<Integer, Integer> most = new TreeMap<>();
    for (List<Cord> cords : songs) {
      Map<Integer, Integer> count = new HashMap<>();
      for (Cord cord : cords) {
        count.merge(
            ruler.cordLengthCm(cord.source().module(), cord.sink().module()).getAsInt(),
            1,
            Integer::sum);
      }
      count.forEach((length, each) -> most.merge(length, each, Math::max));
    }
    TreeMap<Integer, Integer> stock = new TreeMap<>();
    most.forEach((length, each) -> stock.put(length, each + spare() / 3));
    return new CordStock(stock.isEmpty() ? new TreeMap<>(all) : stock);
  }
}
