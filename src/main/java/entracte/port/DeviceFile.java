package entracte.port;

import entracte.midi.OutputPort;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Raw bytes to a device file or a FIFO. Opening a FIFO waits for its reader, so it must happen on a
 * thread that may wait. A file that is not there is not made: an unplugged device must not become
 * an ordinary file.
 */
final class DeviceFile implements OutputPort {
  private final OutputStream out;

  private DeviceFile(OutputStream out) {
    this.out = out;
  }

  static OutputPort open(String path) throws IOException {
    if (!Files.exists(Path.of(path))) {
      throw new IOException("there is no " + path);
    }
    return new DeviceFile(new FileOutputStream(path, true));
  }

  @Override
  public void send(byte[] message) throws IOException {
    out.write(message);
    out.flush();
  }

  @Override
  public void close() {
    try {
      out.close();
    } catch (IOException alreadyGone) {
      // It was closed because it was lost.
    }
  }
}
