package entracte.setlist;

import java.util.List;

/** A source jack and the sink jacks it feeds, in the order written. */
public record Connection(End source, List<End> sinks) {
  public Connection {
    sinks = List.copyOf(sinks);
  }
}
