package entracte.cli;

import entracte.midi.Message;
import entracte.midi.Trigger;
import entracte.port.MidiPorts;
import entracte.port.PedalWatch;
import entracte.port.PortName;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Lists the MIDI ports, and tells what a pedal sends. */
@Command(
    name = "ports",
    sortOptions = false,
    description = {
      "Lists the MIDI ports by the names that a rig's file uses. With --listen it tells what"
          + " arrives, and the line that makes a pressed pedal the foot switch of your rig."
    },
    footer = {
      "",
      "Examples:",
      "  java -jar target/entracte.jar ports",
      "  java -jar target/entracte.jar ports --listen 5"
    })
final class PortsCommand implements Callable<Integer> {
  private static final double MOST_SECONDS = 3600;

  private final Streams streams;

  @Option(
      names = "--listen",
      paramLabel = "S",
      converter = ListenSeconds.class,
      description = "Listen to every port for S seconds; press the pedal meanwhile.")
  private Double listenSeconds;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Say this.")
  private boolean help;

  PortsCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws InterruptedException {
    List<PortName> ports = MidiPorts.list();
    list("Sending to", ports.stream().filter(PortName::takes).toList());
    list("Listening to", ports.stream().filter(PortName::gives).toList());
    if (listenSeconds != null) {
      if (!(listenSeconds > 0 && listenSeconds <= MOST_SECONDS)) {
        throw Stop.wrongUsage("listening takes more than 0 and up to 3600 seconds", "");
      }
      listen(ports);
    }
    return ExitCode.DONE;
  }

  private void list(String heading, List<PortName> ports) {
    streams.line(heading + (ports.isEmpty() ? ": no port" : ":"));
    for (PortName port : ports) {
      boolean more = !port.description().isEmpty() && !port.description().equals(port.name());
      streams.line("  " + port.name() + (more ? "  (" + port.description() + ")" : ""));
    }
  }

  private void listen(List<PortName> ports) throws InterruptedException {
    List<String> names = ports.stream().filter(PortName::gives).map(PortName::name).toList();
    if (names.isEmpty()) {
      throw Stop.trouble(
          "there is no MIDI port to listen to",
          "Plug the pedal in and look again. One that types keys has no port: write press: page"
              + " down.");
    }
    streams.line("Press the pedal.");
    streams.out().flush();
    PedalWatch.listen(names, listenSeconds, this::heard)
        .forEach(trouble -> streams.complain("entracte: " + trouble));
  }

  private void heard(String port, Message message) {
    streams.line(port + ": " + say(message));
    Trigger.pressedBy(message)
        .ifPresent(
            press ->
                streams.line(
                    "  foot switch: {port: %s, press: %s}".formatted(port, press.written())));
    streams.out().flush();
  }

  private static String say(Message message) {
    String text = message.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ");
    String values = message.toString().replaceAll("^[^\\[]*\\[|\\]$", "").replace('=', ' ');
    return text.toLowerCase(Locale.ROOT) + ", " + values;
  }

  /** A time, with its unit or without. */
  static final class ListenSeconds implements ITypeConverter<Double> {
    @Override
    public Double convert(String typed) {
      try {
        return Double.parseDouble(typed.strip().replaceFirst("\\s*s$", ""));
      } catch (NumberFormatException e) {
        throw new TypeConversionException("seconds are like 20 or 20s, not " + typed);
      }
    }
  }
}
