package entracte.rig;

/** A jack by its name on the panel; equal jacks share one {@code Jack}. */
public record Jack(String name, Direction direction) {}
