package entracte.cli;

import entracte.rehearsal.Dialogue;

/** A conversation that has to be ended. */
interface Talk extends Dialogue, AutoCloseable {
  @Override
  void close();
}
