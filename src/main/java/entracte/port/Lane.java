package entracte.port;

import entracte.midi.Dispatch;
import entracte.midi.Outlet;
import entracte.midi.OutputPort;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Consumer;

/** One outlet and its thread: dispatches leave in their order, and only this thread ever waits. */
final class Lane {
  private static final long NANOS_A_MILLI = 1_000_000;

  private final Outlet outlet;
  private final Consumer<Sent> report;
  private final BlockingQueue<Runnable> jobs = new LinkedBlockingQueue<>();
  private Optional<OutputPort> port = Optional.empty();

  Lane(Outlet outlet, Consumer<Sent> report) {
    this.outlet = outlet;
    this.report = report;
    Thread thread = new Thread(this::run, "to " + outlet.name());
    thread.setDaemon(true);
    thread.start();
  }

  Outlet outlet() {
    return outlet;
  }

  void send(Dispatch dispatch) {
    jobs.add(() -> sendNow(dispatch));
  }

  /** Opens the port ahead of the first message, so that this costs no time on stage. */
  void open() {
    jobs.add(
        () -> {
          try {
            openNow();
          } catch (IOException absent) {
            shut();
          }
        });
  }

  /** Lets go of a port that is gone; the next message opens it afresh. */
  void lost() {
    jobs.add(this::shut);
  }

  /** Runs {@code after} once everything before it has left. */
  void then(Runnable after) {
    jobs.add(after);
  }

  private void run() {
    try {
      while (true) {
        jobs.take().run();
      }
    } catch (InterruptedException ended) {
      shut();
    }
  }

  private void sendNow(Dispatch dispatch) {
    long begun = System.nanoTime();
    String trouble = "";
    try {
      OutputPort open = openNow();
      for (Dispatch.Timed timed : dispatch.messages()) {
        if (timed.waitMillis() > 0) {
          Thread.sleep(timed.waitMillis());
        }
        open.send(timed.message().bytes());
      }
    } catch (IOException lost) {
      trouble = String.valueOf(lost.getMessage());
      shut();
    } catch (InterruptedException ended) {
      trouble = "the program ended";
      Thread.currentThread().interrupt();
    }
    long millis = (System.nanoTime() - begun) / NANOS_A_MILLI;
    report.accept(new Sent(dispatch, trouble.isEmpty(), millis, trouble));
  }

  private OutputPort openNow() throws IOException {
    if (port.isEmpty()) {
      port = Optional.of(opened());
    }
    return port.get();
  }

  private OutputPort opened() throws IOException {
    if (outlet instanceof Outlet.Device device) {
      return DeviceFile.open(device.name());
    }
    return MidiPorts.openOutput(outlet.name());
  }

  private void shut() {
    port.ifPresent(OutputPort::close);
    port = Optional.empty();
  }
}
