package entracte.midi;

import java.io.IOException;

/**
 * What takes bytes. Sending may block for as long as the wire takes; that it returns does not say
 * that anybody listened.
 */
public interface OutputPort extends AutoCloseable {
  /** Sends one whole message; throws if the port is known to be gone. */
  void send(byte[] message) throws IOException;

  @Override
  void close();
}
