package entracte.rig;

/** A knob's scale, in the figures printed around it. */
public record Scale(double low, double high) {
  public Scale {
    if (!(low < high)) {
      throw new IllegalArgumentException("a scale rises: " + low + ".." + high);
    }
  }

  public boolean contains(double value) {
    return low <= value && value <= high;
  }
}
