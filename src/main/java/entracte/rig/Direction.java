package entracte.rig;

/** Which way a signal runs through a jack. A tap, on a passive multiple, serves as either. */
public enum Direction {
  IN,
  OUT,
  TAP
}
