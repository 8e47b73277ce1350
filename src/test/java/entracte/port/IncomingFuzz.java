package entracte.port;

import entracte.midi.Message;
import entracte.midi.Trigger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Any bytes as what a pedal's port gives: messages of up to three bytes, each after some
 * milliseconds. Whatever comes, no two presses are counted within the lock-out.
 */
public final class IncomingFuzz {
  private static final List<String> TRIGGERS =
      List.of("cc 64", "note 60", "program 5", "cc 64 on channel 3", "page down");

  private static final long LOCK_OUT = 250;

  private IncomingFuzz() {}

  /** Called with ever new bytes by the fuzzer, and by a test with those that once did harm. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    for (String trigger : TRIGGERS) {
      for (boolean latching : new boolean[] {false, true}) {
        listen(new FootLogic(Trigger.parse(trigger).orElseThrow(), latching, LOCK_OUT), bytes);
      }
    }
  }

  private static void listen(FootLogic foot, byte[] bytes) {
    long now = 0;
    long pressed = -LOCK_OUT;
    int at = 0;
    while (at + 1 < bytes.length) {
      now += (bytes[at] & 0xFF) * 4L;
      int end = Math.min(bytes.length, at + 2 + (bytes[at + 1] & 3));
      byte[] message = Arrays.copyOfRange(bytes, at + 2 > end ? end : at + 2, end);
      at = Math.max(end, at + 2);
      Optional<Message> read = Message.read(message);
      if (read.isPresent() && !Arrays.equals(read.get().bytes(), message)) {
        throw new AssertionError("a message is not what arrived: " + read.get());
      }
      foot.stays(now);
      if (read.isPresent() && foot.hear(read.get(), now).isPresent()) {
        if (now - pressed < LOCK_OUT) {
          throw new AssertionError("two presses within " + (now - pressed) + " ms");
        }
        pressed = now;
      }
    }
  }
}
