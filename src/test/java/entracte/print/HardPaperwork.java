package entracte.print;

import entracte.cue.CaseMap;
import entracte.cue.CaseMap.Panel;
import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Packing;
import entracte.cue.Paperwork;
import entracte.cue.PatchNotes;
import entracte.cue.SongCard;
import entracte.cue.SongSheet;
import entracte.cue.Spot;
import entracte.cue.Standing;
import entracte.cue.Step;
import entracte.cue.Touch;
import entracte.cue.Touch.Act;
import entracte.cue.Touch.Travel;
import entracte.cue.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Papers that nobody would want: names of a hundred letters without a space, a module half a
 * centimetre wide beside one of a metre, eighty moves on one module.
 */
final class HardPaperwork {
  private static final String LONG = "Donaudampfschifffahrt".repeat(6);
  private static final String TALL = "a b c d e f g h ".repeat(60).strip();
  private static final int MOVES = 80;

  private HardPaperwork() {}

  static Paperwork papers() {
    Cue setUp = cue(1, LONG, true);
    Cue card = cue(2, TALL, false);
    CueSheet sheet =
        new CueSheet(LONG, LONG, List.of(TALL), List.of(LONG), List.of(setUp, card), TALL);
    CaseMap map =
        new CaseMap(
            List.of(
                List.of(new Panel(LONG, 0, 0.5), new Panel(TALL, 0.5, 100)),
                List.of(new Panel("x", 0, 6))),
            300);
    Packing packing = new Packing(List.of(LONG), List.of(TALL), List.of(""));
    return new Paperwork(
        sheet,
        map,
        new Standing(List.of(TALL), List.of(LONG)),
        List.of(song(1, LONG), song(2, TALL)),
        List.of(1, 2),
        packing);
  }

  private static Cue cue(int number, String song, boolean setUp) {
    List<Step> steps = new ArrayList<>();
    IntStream.range(0, MOVES).forEach(i -> steps.add(step(i)));
    return new Cue(
        number,
        song,
        setUp,
        steps,
        12345,
        0,
        OptionalDouble.of(9999),
        List.of(LONG),
        List.of(TALL),
        new SongCard(List.of(TALL), List.of(LONG), List.of("")));
  }

  private static Step step(int i) {
    Verb[] verbs = {Verb.PULL, Verb.PLUG, Verb.SWITCH, Verb.TURN, Verb.TUNE};
    Act[] acts = {Act.PULL, Act.PLUG, Act.SWITCH, Act.TURN, Act.TUNE};
    int kind = i % verbs.length;
    Spot spot = new Spot(i % 3 == 0 ? LONG : TALL, 0, 3, i);
    Travel travel = new Travel(acts[kind] == Act.SWITCH ? 40 : 0, OptionalDouble.of(1), 0);
    boolean set = acts[kind] == Act.SWITCH || acts[kind] == Act.TURN;
    Touch touch = new Touch(acts[kind], spot, LONG, set ? Optional.of(travel) : Optional.empty());
    String text = verbs[kind] + " " + (i == 0 ? TALL : LONG);
    List<Spot> reach = List.of(spot, spot);
    List<Touch> touches = List.of(touch, touch);
    return new Step(
        verbs[kind], text, "", 1, reach, 0, 0, false, touches, List.of(), false, List.of(LONG));
  }

  private static SongSheet song(int number, String name) {
    return new SongSheet(
        number,
        name,
        Optional.of(LONG),
        Optional.of(TALL),
        Optional.of(""),
        Optional.of(TALL),
        OptionalDouble.of(12345),
        3600,
        true,
        List.of(LONG),
        List.of(TALL),
        List.of(LONG),
        List.of(TALL, LONG),
        List.of(TALL, LONG),
        new Standing(List.of(LONG), List.of(TALL)),
        List.of(TALL),
        List.of(LONG),
        List.of(LONG),
        new PatchNotes(List.of(LONG), List.of(TALL), List.of(LONG), List.of(LONG), List.of(LONG)));
  }
}
