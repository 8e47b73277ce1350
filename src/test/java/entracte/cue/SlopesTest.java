package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a patch card says of filters. */
class SlopesTest {
  @TempDir Path folder;

  @Test
  void aPatchCardFollowsTheSwitchToItsJumper() {
    CraftFiles files =
        new CraftFiles(
            folder,
            """
            rig: Shelf
            kinds:
              oscillator: {out: [saw]}
              filter:
                in: [audio]
                out: [out]
                switches: {slope: [4-pole, other]}
                jumpers: {other slope: [2-pole, 3-pole]}
              output: {in: [in x3]}
            rows:
              - - osc 1: oscillator
                - filter 1: filter
                - main: output
            """);
    String song =
        """
        roles: {lead: osc 1, body: filter}
        connections: {lead.saw: body.audio, body.out: main.in}
        """;
    files
        .song(song + "settings: {body: {slope: 4-pole}}\n")
        .song(song + "settings: {body: {slope: other, other slope: 3-pole}}\n");
    List<SongSheet> songs = files.papers().songs();
    assertEquals(
        List.of("filter 1 slope at 4-pole: 24 dB an octave"), songs.get(0).patchNotes().slopes());
    assertEquals(
        List.of("filter 1 slope at other (3-pole): 18 dB an octave"),
        songs.get(1).patchNotes().slopes());
  }

  @Test
  void aJumperNamedByDecibelsIsASlopeAndNoGain() {
    CraftFiles files =
        new CraftFiles(
            folder,
            """
            rig: Shelf
            kinds:
              oscillator: {out: [saw]}
              filter: {in: [audio], out: [out], jumpers: {slope: [12 dB, 24 dB]}}
              output: {in: [in x3]}
            rows:
              - - osc 1: oscillator
                - filter 1: filter
                - main: output
            """);
    files.song(
        """
        roles: {lead: osc 1, body: filter}
        connections: {lead.saw: body.audio, body.out: main.in}
        settings: {body: {slope: 24 dB}}
        """);
    Paperwork papers = files.papers();
    assertEquals(
        List.of("filter 1 slope at 24 dB: 24 dB an octave"),
        papers.songs().get(0).patchNotes().slopes());
    assertEquals(List.of("filter 1 slope to 24 dB"), papers.sheet().jumpers());
  }
}
