package entracte.check;

import entracte.setlist.Patch;
import entracte.setlist.SetList;
import entracte.setlist.Slot;
import entracte.setlist.Song;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Gaps, talk and the slot. */
final class SetTimesTest extends MistakesTest {
  private static final Patch VOICE = voice().build();

  private static Song gap(String name, double seconds) {
    return new Song(
        name, VOICE, List.of(), OptionalDouble.of(seconds), List.of(), Song.Card.blank());
  }

  @Test
  void aGapTakesTime() {
    assertSaid(
        List.of(
            "error: the gap before \"Dawn\" is 0 s"
                + " / Give the seconds that the audience will wait, or leave the gap out."),
        RIG,
        gap("Dusk", 0.5),
        gap("Dawn", 0));
    assertSaid(
        List.of(
            "error: the gap before \"Dusk\" is -3 s"
                + " / Give the seconds that the audience will wait, or leave the gap out."),
        RIG,
        gap("Dusk", -3));
  }

  @Test
  void aWrongGapOfTheWholeSetIsToldOnce() {
    assertSaid(
        List.of(
            "error: the gap before \"Dusk\" and 2 more songs is 0 s"
                + " / Give the seconds that the audience will wait, or leave the gap out."),
        RIG,
        gap("Dusk", 0),
        gap("Dawn", 0),
        gap("Noon", 0));
  }

  @Test
  void aGapOfMoreThanAnHourIsHardlyMeant() {
    assertSaid(List.of(), RIG, gap("Dusk", 3600));
    assertSaid(
        List.of(
            "warning: the gap before \"Dawn\" is longer than an hour"
                + " / Give the time from the end of one song to the beginning of the next."),
        RIG,
        gap("Dusk", 60),
        gap("Dawn", 75000));
  }

  private static Song talk(String name, double seconds, double gap) {
    return new Song(
        name,
        VOICE,
        List.of(),
        OptionalDouble.of(gap),
        List.of(),
        Song.Card.blank(),
        new Song.Running(seconds, false));
  }

  @Test
  void aGapIsAsLongAsTheTalkInIt() {
    assertSaid(
        List.of(
            "note: the talk before \"Dawn\" takes 2:00, and the gap is 1:30"
                + " / Nobody waits while there is talk: let the gap be as long."),
        RIG,
        talk("Dusk", 90, 90),
        talk("Dawn", 120, 90));
  }

  private static Song lasting(String name, double seconds, boolean encore) {
    Song.Card card =
        new Song.Card(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.of(seconds),
            encore);
    return new Song(name, VOICE, List.of(), OptionalDouble.empty(), List.of(), card);
  }

  private static SetList slot(double seconds, double reserve) {
    List<Song> songs =
        List.of(
            lasting("Dusk", 200, false), lasting("Dawn", 250, false), lasting("Noon", 90, true));
    Slot slot = new Slot(OptionalDouble.of(seconds), reserve);
    return new SetList("night", RIG, songs, true).withSlot(slot);
  }

  @Test
  void theSongsFitTheSlotWithoutTheEncore() {
    assertSaid(List.of(), slot(450, 0));
    assertSaid(
        List.of(
            "warning: the songs alone take 7:30, and the slot leaves 6:30"
                + " / Leave a song out, or ask for a longer slot."),
        slot(450, 60));
  }

  @Test
  void aSongThatIsKeptIsNotLeftOut() {
    Song.Running kept = new Song.Running(0, true);
    Song dusk = lasting("Dusk", 500, false);
    Song dawn =
        new Song("Dawn", VOICE, List.of(), OptionalDouble.empty(), List.of(), dusk.card(), kept);
    Slot slot = new Slot(OptionalDouble.of(900), 0);
    assertSaid(
        List.of(
            "warning: the songs alone take 16:40, and the slot leaves 15:00"
                + " / Leave a song out, but not \"Dawn\", or ask for a longer slot."),
        new SetList("night", RIG, List.of(dusk, dawn), true).withSlot(slot));
  }

  @Test
  void aReserveIsPartOfTheSlot() {
    assertSaid(
        List.of(
            "warning: the reserve of 10:00 leaves nothing of the slot of 10:00"
                + " / Give as the reserve what you would rather not need."),
        slot(600, 600));
  }
}
