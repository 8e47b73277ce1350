package entracte.midi;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Messages for one piece of gear, in their order and with the waits between them.
 *
 * @param gear whom it is for, as the musician calls it
 * @param outlet where it leaves
 */
public record Dispatch(String gear, Outlet outlet, List<Timed> messages) {
  public Dispatch {
    Objects.requireNonNull(gear);
    Objects.requireNonNull(outlet);
    messages = List.copyOf(messages);
  }

  /** A message, and the time to let pass before it leaves. */
  public record Timed(int waitMillis, Message message) {
    public Timed {
      Objects.requireNonNull(message);
      if (waitMillis < 0) {
        throw new IllegalArgumentException("time runs forward: " + waitMillis);
      }
    }

    public static Timed now(Message message) {
      return new Timed(0, message);
    }
  }

  /** Every message at once. */
  public static Dispatch atOnce(String gear, Outlet outlet, List<Message> messages) {
    return new Dispatch(gear, outlet, messages.stream().map(Timed::now).toList());
  }

  /** The bytes in hexadecimal, waits in between: {@code B0 40 00 C0 04 wait 100 ms B0 07 5A}. */
  public String hex() {
    return messages.stream()
        .map(t -> (t.waitMillis() > 0 ? "wait " + t.waitMillis() + " ms " : "") + hex(t.message()))
        .collect(Collectors.joining(" "));
  }

  private static String hex(Message message) {
    StringBuilder text = new StringBuilder();
    for (byte each : message.bytes()) {
      text.append(text.length() == 0 ? "" : " ").append(String.format("%02X", each & 0xFF));
    }
    return text.toString();
  }
}
