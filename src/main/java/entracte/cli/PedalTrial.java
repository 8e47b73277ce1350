package entracte.cli;

import entracte.midi.Trigger;
import entracte.port.PedalWatch;
import entracte.rig.FootSwitch;
import entracte.stage.Input;
import entracte.terminal.Key;
import java.io.IOException;
import java.util.Optional;

/** Whether the foot switch answers; the one trial that needs a foot. */
final class PedalTrial {
  private static final String WHAT = "pedal";

  private final Streams streams;
  private final Venue venue;

  PedalTrial(Streams streams, Venue venue) {
    this.streams = streams;
    this.venue = venue;
  }

  Trial of(Optional<FootSwitch> pedal) throws InterruptedException {
    if (pedal.isEmpty()) {
      return Trial.ready(WHAT, "The rig names no foot switch; keys say next.");
    }
    try {
      return pedal.get().port().isEmpty() ? keys() : midi(pedal.get());
    } catch (IOException trouble) {
      return Trial.notReady(
          WHAT,
          "Not usable: " + trouble.getMessage() + ".",
          "Plug it in; \"ports --listen 20\" tells what arrives.");
    }
  }

  private Trial midi(FootSwitch pedal) throws IOException, InterruptedException {
    Optional<Trigger> wanted = Trigger.parse(pedal.press());
    boolean answers =
        PedalWatch.hears(
            pedal.port(),
            venue.footSeconds(),
            this::ask,
            message -> wanted.stream().anyMatch(t -> t.sense(message) != Trigger.Sense.NOTHING));
    return answers
        ? Trial.ready(WHAT, "It answers with " + pedal.press() + ".")
        : Trial.notReady(
            WHAT,
            "No " + pedal.press() + " came from " + pedal.port() + ".",
            "\"ports --listen 20\" tells what arrives, and the line for the rig's file.");
  }

  /** A pedal that acts as a keyboard: it is heard where keys are heard. */
  private Trial keys() throws IOException, InterruptedException {
    if (venue.window().isEmpty()) {
      return Trial.look(
          WHAT, "It types keys, and here is no terminal to hear them.", "Try it in a terminal.");
    }
    ask();
    Optional<Key> key = venue.keys().within(venue.footSeconds());
    if (key.isEmpty()) {
      return Trial.notReady(WHAT, "No key came.", "Is it plugged in, or paired?");
    }
    boolean next =
        key.get() instanceof Key.Says says
            && (says.input() == Input.NEXT
                || says.input() == Input.DOWN
                || says.input() == Input.ENTER);
    return next
        ? Trial.ready(WHAT, "It answers with a key that says next.")
        : Trial.notReady(
            WHAT,
            "Its key does not say next.",
            "Set it to page down, right, down, space or enter.");
  }

  private void ask() {
    streams.complain("Press the pedal now; it has %.0f s.".formatted(venue.footSeconds()));
  }
}
