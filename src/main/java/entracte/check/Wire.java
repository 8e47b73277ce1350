package entracte.check;

import entracte.setlist.Connection;
import java.util.List;

/** A connection whose ends all have owners. */
record Wire(Connection connection, JackAsk source, List<JackAsk> sinks) {
  Wire {
    sinks = List.copyOf(sinks);
  }
}
