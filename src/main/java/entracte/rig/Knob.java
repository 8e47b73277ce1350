package entracte.rig;

/** A knob and its scale. */
public record Knob(String name, Scale scale) {}
