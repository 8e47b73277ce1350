package entracte.read;

import entracte.finding.Finding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A folder of files for a test to read, whose findings are shown without its own path. */
final class Folder {
  static final String RIG =
      """
      rig: Harbour case
      kinds:
        oscillator:
          in: [pitch x2, fm, sync]           # "x2": two equal jacks
          out: [saw, pulse, sine]
          knobs: {tune: -5..5, width: 0..10}
          switches: {octave: [32, 16, 8, 4, 2]}
        filter:
          in: [audio, cutoff cv]
          out: [out]
          knobs: {cutoff: 0..10, resonance: 0..10, cv amount: 0..10}
          switches: {slope: [steep, other]}
          jumpers: {other slope: [2-pole, 3-pole]}   # inside
        mixer:
          channels: {count: 4, in: [in], knobs: {level: 0..10}, closed: {level: 0}}
          out: [out]
        multiple: {taps: 4}
      rows:                                   # top row first, left to right
        - - osc 1: oscillator
          - osc 2: oscillator
          - osc 3: oscillator
        - - filter 1: filter
          - filter 2: filter
          - mix 1: mixer
          - mult 1: multiple
      cords: {30 cm: 10, 60 cm: 8, 90 cm: 4}  # or a plain number
      gear:                                   # MIDI gear that follows along
        piano: {port: Stage Piano, channel: 1, programs from: 1}
      foot switch: {port: Pedal, press: cc 64, hold: back}
      """;

  static final String PATCH =
      """
      patch: two hands
      roles:
        lead: oscillator
        bass: oscillator
        bass fifth: oscillator
        bright: filter
        blend: mixer
      connections:
        keys.pitch 1: lead.pitch
        keys.pitch 2: [bass.pitch, bass fifth.pitch]
        bass.saw: blend.low.in
        bass fifth.saw: blend.high.in
        blend.out: bright.audio
      settings:
        lead: {octave: 8}
        bright: {cutoff: 6.5 +-0.5, resonance: 3, slope: other, other slope: 3-pole}
        blend.low: {level: 7}
        blend.high: {level: 5 +-1}
      """;

  static final String SET =
      """
      set: Night Ferry
      rig: harbour-case.yaml
      gap: 40 s
      songs:
        - song: Slack Water
          patch: patches/two-hands.yaml
          settings: {bright: {cutoff: 4}}
          gap: 25 s
          gear: {piano: {program: 5, volume: 90}}
          key: D minor
          tempo: 92
          starts: viola, four bars
      """;

  private final Path path;

  Folder(Path path) {
    this.path = path;
  }

  /** The example set of the file format. */
  static Folder nightFerry(Path path) {
    return new Folder(path)
        .with("harbour-case.yaml", RIG)
        .with("patches/two-hands.yaml", PATCH)
        .with("set.yaml", SET);
  }

  /** A rig, and a set without songs to read it by. */
  static Folder ofRig(Path path, String rig) {
    return new Folder(path)
        .with("rig.yaml", rig)
        .with("set.yaml", "set: A\nrig: rig.yaml\nsongs: []\n");
  }

  Folder with(String name, String text) {
    return with(name, text.getBytes(StandardCharsets.UTF_8));
  }

  Folder with(String name, byte[] bytes) {
    try {
      Path file = path.resolve(name);
      Files.createDirectories(file.getParent());
      Files.write(file, bytes);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Path path(String name) {
    return path.resolve(name);
  }

  ReadSet read() {
    return SetReader.read(path);
  }

  /** What reading finds, each as place, message and advice. */
  List<String> findings() {
    return lines(read().findings());
  }

  List<String> lines(List<Finding> findings) {
    return findings.stream().map(this::line).toList();
  }

  String line(Finding finding) {
    String line = finding.place() + ": " + finding.message();
    String whole = finding.advice().isEmpty() ? line : line + " | " + finding.advice();
    return whole.replace(path.toString() + "/", "");
  }
}
