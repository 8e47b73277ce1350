package entracte.port;

import entracte.midi.Message;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/** Listens to several ports for a while, to find out what a pedal sends. */
public final class PedalWatch {
  private PedalWatch() {}

  /**
   * Waits until the port gives a message that is wanted, and no longer than so many seconds.
   *
   * @param opened is run once the port is listened to
   * @throws IOException if the port is not there or in use elsewhere
   */
  public static boolean hears(
      String port, double seconds, Runnable opened, Predicate<Message> wanted)
      throws IOException, InterruptedException {
    CountDownLatch heard = new CountDownLatch(1);
    AutoCloseable open =
        MidiPorts.openInput(
            port,
            message -> {
              if (wanted.test(message)) {
                heard.countDown();
              }
            });
    try {
      opened.run();
      return heard.await((long) (seconds * TimeUnit.SECONDS.toNanos(1)), TimeUnit.NANOSECONDS);
    } finally {
      Wiring.Quietly.close(open);
    }
  }

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
