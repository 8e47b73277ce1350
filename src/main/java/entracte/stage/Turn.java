package entracte.stage;

import java.util.List;

/** What an event leads to. */
public record Turn(Night night, List<Effect> effects) {
  public Turn {
    effects = List.copyOf(effects);
  }
}
