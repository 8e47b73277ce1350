package entracte.setlist;

/**
 * One end of a connection as written: {@code bass.saw}, {@code blend.low.in}, {@code keys.pitch 1}.
 * The last dot parts the jack from its owner.
 */
public record End(String text) {
  /** The role, the module or the role's channel that has the jack; empty if there is no dot. */
  public String owner() {
    int dot = text.lastIndexOf('.');
    return dot < 0 ? "" : text.substring(0, dot).strip();
  }

  public String jack() {
    return text.substring(text.lastIndexOf('.') + 1).strip();
  }

  @Override
  public String toString() {
    return text;
  }
}
