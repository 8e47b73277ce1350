package entracte.read;

import java.nio.file.Path;

/** A set, a rig and a patch that between them use every name that a file can hold. */
final class FullFiles {
  private static final String RIG =
      """
      rig: Harbour case
      row height: 24
      warm up: 20 min
      tune again: 45 min
      kinds:
        keyboard:
          width: 8 cm
          out: [pitch x2, gate]
          played by: {left hand: [pitch, gate]}
          ohms out: 1k
        oscillator:
          in: [pitch x2, fm, sync]
          out: [saw, pulse, sine]
          knobs: {tune: -5..5, width: 0..10}
          switches: {octave: [32, 16, 8], range: wide}
          signals: {pitch: pitch, audio: [saw, pulse, sine], control: [fm], gate: [sync]}
          ohms in: 100k
          volts per octave: 1.2
        filter:
          in: [audio, cutoff cv x 2]
          out: out
          leaves: [out]
          knobs: {cutoff: 0..10, resonance: 0 .. 10}
          jumpers: {other slope: [2-pole, 3-pole]}
        mixer:
          channels: {count: 4, in: [in], out: [send], knobs: {level: 0..10},
                     switches: {mute: [off, on]}, closed: {level: 0, mute: on}}
          out: [out]
        multiple: {taps: 4, width: 30 mm, buffered: yes}
        attenuator:
          channels: {count: 2, in: in, knobs: {amount: 0..10}}
          attenuates: {amount: linear}
      rows:
        - - keys: keyboard
          - osc 1: oscillator
          - osc 2: oscillator
        - - filter 1: filter
          - mix 1: mixer
          - {mult 1: multiple, att 1: attenuator}
      cords: {30 cm: 10, 0.6 m: 8, 900 mm: 4}
      gear:
        piano: {port: Stage Piano, channel: 1, programs from: 1, settle: 0.2 s, banks: high}
        drums: {device: pipe, channel: 10, send: song, notes off: one by one}
      foot switch: {port: Pedal, press: cc 64 on channel 2, hold: back, back: note 12,
                    latching: yes, lock out: 0.3 s, deaf after sending: 0.5 s}
      hands: {light: 1.25, read: 1 s, tune: 8 s, tune fifth: 9 s, tune other: 11 s, raise: 1 s,
        plugs: close, pull: 0.3 s, first: 30 cm,
        module: 5 cm, bag: 60 cm, hang: 20 cm, level: 180, sweep: 300}
      """;

  private static final String PATCH =
      """
      patch: two hands
      like: base.yaml
      roles:
        lead: oscillator
        bass: [oscillator, filter]
        bright: filter
      connections:
        keys.pitch 1: lead.pitch
        keys.pitch 2: [bass.pitch, lead.fm]
        keys.gate: none
        lead.saw: bright.audio
      settings:
        lead: {octave: 8, tune: 0.5}
        bright: {cutoff: 6.5 +-0.5, resonance: 3, other slope: 3-pole}
      tune: {bass: pure fifth above lead}
      scale: {lead: quarter tones}
      drive: {bright: wanted}
      listen for: a slow beat
      """;

  private static final String BASE =
      """
      patch: base
      roles: {lead: oscillator}
      connections: {keys.gate: lead.sync}
      """;

  private static final String SET =
      """
      set: Night Ferry
      rig: harbour-case.yaml
      gap: 40 s
      A4: 442
      tune on: D4
      park: no
      slot: 45 min
      reserve: 2:30
      fallback: Slack Water
      drone: patches/two-hands.yaml
      together: [[Slack Water, Ebb]]
      apart: [Slack Water, Flood]
      songs:
        - song: Slack Water
          patch: patches/two-hands.yaml
          settings: {bright: {cutoff: 4}}
          gap: 25 s
          gear:
            piano: {program: 5, volume: 90, cc 74: 3, bank: 0/2, rpn 0: 200, fine cc 7: 9000}
            drums: {bank: {high: 0, low: 2}, nrpn 130: 5, fine volume: 8000}
          key: D minor
          tempo: 92
          starts: viola, four bars
          notes: quietly
          length: 3:10
          sections:
            - {section: bridge, gear: {piano: {program: 6}}}
          keep: yes
          listen for: the low end
          first: yes
        - {song: Ebb, patch: patches/two-hands.yaml, tempo: free, talk: 20 s, before: [Flood]}
        - {song: Flood, patch: patches/two-hands.yaml, place: 3, last: no, after: Ebb, encore: yes}
      """;

  private FullFiles() {}

  static Folder in(Path path) {
    return new Folder(path)
        .with("harbour-case.yaml", RIG)
        .with("patches/two-hands.yaml", PATCH)
        .with("patches/base.yaml", BASE)
        .with("set.yaml", SET);
  }

  static String text(String name) {
    return switch (name) {
      case "set.yaml" -> SET;
      case "harbour-case.yaml" -> RIG;
      default -> PATCH;
    };
  }
}
