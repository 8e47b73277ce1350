package entracte.cli;

import entracte.check.PlayableSet;
import entracte.plan.Ordered;
import entracte.plan.Result;
import java.util.LinkedHashMap;
import java.util.Map;

/** A proposed order as one JSON object; {@code was} is a song's place in the set as written. */
final class OrderJson {
  private OrderJson() {}

  static Map<String, Object> of(Ordered.Found found, PlayableSet set) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("set", set.setList().name());
    json.put("moves", found.proposed().plan().moves());
    json.put("lowerBound", found.lowerBound());
    json.put("proven", found.proven());
    json.put("setUpMoves", found.proposed().plan().setUpMoves());
    json.put("written", found.written().map(w -> written(found, w)).orElse(null));
    json.put("saved", found.saved());
    json.put("order", found.order().stream().map(song -> song(found, set, song)).toList());
    return json;
  }

  private static Map<String, Object> written(Ordered.Found found, Result.Planned written) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("moves", written.plan().moves());
    json.put("lowerBound", written.lowerBound());
    json.put("proven", written.proven());
    json.put("permitted", found.writtenPermitted());
    return json;
  }

  private static Map<String, Object> song(Ordered.Found found, PlayableSet set, int song) {
    int place = found.order().indexOf(song);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("song", set.setList().songs().get(song).name());
    json.put("was", song + 1);
    json.put("moves", found.proposed().plan().changeovers().get(place).moves());
    return json;
  }
}
