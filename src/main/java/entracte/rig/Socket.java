package entracte.rig;

/**
 * One physical jack: the very hole a plug goes into.
 *
 * @param number which of the group's equal strips, from 1
 */
public record Socket(Module module, Group group, int number, Jack jack) {
  /** {@code osc 1.saw}, {@code mix 1.2.in}, {@code osc 1.pitch.2}, {@code mult 1.tap.3}. */
  @Override
  public String toString() {
    return module.name() + "." + local();
  }

  /** The name without the module: {@code 2.in}. */
  public String local() {
    return switch (group.form()) {
      case OWN -> jack.name();
      case CHANNELS -> number + "." + jack.name();
      case EQUAL_JACKS -> jack.name() + "." + number;
    };
  }
}
