package entracte.port;

import entracte.midi.Message;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;

/** Listens to several ports for a while, to find out what a pedal sends. */
public final class PedalWatch {
  private PedalWatch() {}

  private record Heard(String port, Message message) {}

  /**
   * Tells {@code told} what arrives, on this thread.
   *
   * @return the ports that could not be opened, a sentence each
   */
  public static List<String> listen(
      List<String> ports, double seconds, BiConsumer<String, Message> told)
      throws InterruptedException {
    BlockingQueue<Heard> queue = new LinkedBlockingQueue<>();
    List<AutoCloseable> open = new ArrayList<>();
    List<String> troubles = new ArrayList<>();
    for (String port : ports) {
      try {
        open.add(MidiPorts.openInput(port, message -> queue.add(new Heard(port, message))));
      } catch (IOException busy) {
        troubles.add(busy.getMessage());
      }
    }
    long end = System.nanoTime() + (long) (seconds * TimeUnit.SECONDS.toNanos(1));
    for (long left = end - System.nanoTime(); left > 0; left = end - System.nanoTime()) {
      Heard heard = queue.poll(left, TimeUnit.NANOSECONDS);
      if (heard != null) {
        told.accept(heard.port(), heard.message());
      }
    }
    open.forEach(Wiring.Quietly::close);
    return troubles;
  }
}
