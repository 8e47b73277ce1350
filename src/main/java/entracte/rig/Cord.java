package entracte.rig;

/**
 * A cord from a source jack to a sink jack. Between two taps the source is the one on the side of
 * the signal's source. Plugged the other way round it is the same piece of wire in the same two
 * jacks: see {@link #sameJacks}.
 */
public record Cord(Socket source, Socket sink) {
  public boolean sameJacks(Cord other) {
    return equals(other) || (source.equals(other.sink) && sink.equals(other.source));
  }

  public boolean uses(Socket socket) {
    return source.equals(socket) || sink.equals(socket);
  }

  /** The jack at the end that is not in {@code socket}. */
  public Socket otherThan(Socket socket) {
    return source.equals(socket) ? sink : source;
  }

  @Override
  public String toString() {
    return source + " to " + sink;
  }
}
