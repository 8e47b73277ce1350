package entracte.rig;

/** Where a knob or a switch stands. */
public sealed interface Position {
  /** A knob's figure on its scale. */
  record At(double value) implements Position {
    @Override
    public String toString() {
      return Figures.plain(value);
    }
  }

  /** A switch's position by name. */
  record Thrown(String position) implements Position {
    @Override
    public String toString() {
      return position;
    }
  }
}
