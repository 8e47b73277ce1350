package entracte.cli;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Step;
import entracte.plan.Aim;
import entracte.plan.Changeover;
import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.plan.Result;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.StripAs;
import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.setlist.GearCue;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A plan as one JSON object. Physical names are {@code module.jack}, {@code module.channel.jack},
 * {@code module.jack.number}; the sheet and the plan it words hold the same changeovers.
 */
final class PlanJson {
  private static final double MILLISECONDS = 1000;

  private PlanJson() {}

  static Map<String, Object> of(Result.Planned planned, CueSheet sheet, Aim aim) {
    Plan plan = planned.plan();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("set", plan.setList().name());
    json.put("aim", aim.name().toLowerCase(Locale.ROOT));
    json.put("moves", plan.moves());
    json.put("lowerBound", planned.lowerBound());
    json.put("proven", planned.proven());
    json.put("setUpMoves", plan.setUpMoves());
    json.put("setUpLowerBound", planned.setUpLowerBound());
    json.put("setUpProven", planned.setUpProven());
    json.put("overrunSeconds", (int) sheet.cues().stream().mapToLong(Cue::wholeOverrun).sum());
    json.put("quickestProven", planned.quickest());
    json.put("stopped", planned.stopped().name().toLowerCase(Locale.ROOT));
    json.put("searchSeconds", Math.round(planned.searchSeconds() * MILLISECONDS) / MILLISECONDS);
    json.put("aboutTimes", sheet.aboutTimes());
    Map<String, String> jumpers = new TreeMap<>();
    plan.jumpers().forEach((jumper, position) -> jumpers.put(jumper.toString(), position));
    json.put("jumpers", jumpers);
    json.put("songs", plan.songs().stream().map(s -> song(s, plan)).toList());
    List<Object> changeovers = new ArrayList<>();
    for (int i = 0; i < plan.changeovers().size(); i++) {
      changeovers.add(changeover(plan.changeovers().get(i), sheet.cues().get(i)));
    }
    json.put("changeovers", changeovers);
    return json;
  }

  private static Map<String, Object> song(SongPlan song, Plan plan) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("song", song.song().name());
    json.put("casting", casting(song));
    json.put("gear", song.song().gear().stream().map(PlanJson::gear).toList());
    json.put("cords", song.required().stream().map(PlanJson::ends).toList());
    json.put("parked", song.parked().stream().map(PlanJson::ends).toList());
    if (plan.setList().rig().cords().lengthMatters()) {
      json.put("cordLengthsCm", lengths(song.required()));
      json.put("parkedLengthsCm", lengths(song.parked()));
    }
    Map<String, Object> positions = new LinkedHashMap<>();
    for (Module module : plan.setList().rig().modules()) {
      for (Control control : module.controls()) {
        if (song.positions().containsKey(control)) {
          positions.put(control.toString(), value(song.positions().get(control)));
        }
      }
    }
    json.put("positions", positions);
    return json;
  }

  /** Controllers by the names that the set gives them. */
  private static Map<String, Object> gear(GearCue cue) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("gear", cue.gear());
    cue.bank().ifPresent(bank -> json.put("bank", List.of(bank.high(), bank.low())));
    cue.program().ifPresent(program -> json.put("program", program));
    Map<String, Object> controllers = new LinkedHashMap<>();
    cue.controls().forEach(c -> controllers.put(c.written(), c.value()));
    cue.fine().forEach(fine -> controllers.put(fine.written(), fine.value()));
    json.put("controllers", controllers);
    return json;
  }

  static Map<String, Object> casting(SongPlan song) {
    Map<String, Object> casting = new LinkedHashMap<>();
    for (SongPlan.CastAs cast : song.casting()) {
      casting.put(cast.role(), cast.module().name());
      for (StripAs strip : cast.strips()) {
        casting.put(key(casting, cast, strip), strip(cast.module(), strip));
      }
    }
    return casting;
  }

  /** {@code main out.in 1} and {@code main out.in 2} where a role's patch says "in" twice. */
  private static String key(Map<String, Object> taken, SongPlan.CastAs cast, StripAs strip) {
    String plain = cast.role() + "." + strip.label();
    boolean alone =
        cast.strips().stream().filter(s -> s.label().equals(strip.label())).count() == 1;
    if (alone) {
      return plain;
    }
    Set<String> others = new HashSet<>(taken.keySet());
    cast.strips().forEach(s -> others.add(cast.role() + "." + s.label()));
    return IntStream.iterate(1, n -> n + 1)
        .mapToObj(n -> plain + " " + n)
        .filter(name -> !others.contains(name))
        .findFirst()
        .orElseThrow();
  }

  /** {@code mix 1.2} for a channel, {@code osc 1.pitch.2} for an equal jack. */
  private static String strip(Module module, StripAs strip) {
    String jack = strip.label().replaceFirst(" \\d+$", "");
    boolean equal = module.kind().equalJacks(jack).isPresent();
    return module.name() + "." + (equal ? jack + "." : "") + strip.number();
  }

  private static List<String> ends(PluggedCord cord) {
    return List.of(cord.cord().source().toString(), cord.cord().sink().toString());
  }

  private static List<Integer> lengths(List<PluggedCord> cords) {
    return cords.stream().map(PluggedCord::lengthCm).toList();
  }

  private static Object value(Position position) {
    return position instanceof Position.At at ? (Object) at.value() : position.toString();
  }

  private static Map<String, Object> changeover(Changeover changeover, Cue cue) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("to", cue.song());
    json.put("setUp", changeover.setUp());
    json.put("moves", changeover.moves());
    json.put("pulls", changeover.pulls());
    json.put("plugs", changeover.plugs());
    json.put("turns", changeover.turns());
    json.put("flips", changeover.flips());
    json.put("seconds", cue.seconds());
    json.put("runs", cue.runs());
    cue.gapSeconds().ifPresent(gap -> json.put("gapSeconds", gap));
    json.put("steps", cue.steps().stream().map(PlanJson::step).toList());
    json.put("beforeTuning", cue.ear().before());
    json.put("tuning", cue.ear().targets());
    json.put("check", cue.lookAt());
    json.put("mind", cue.ear().mind());
    cue.ear().level().ifPresent(level -> json.put("level", level));
    json.put("trust", cue.ear().trusted());
    json.put("listenFor", cue.ear().listenFor());
    return json;
  }

  private static Map<String, Object> step(Step step) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("move", step.verb().word());
    json.put("text", step.text());
    json.put("moves", step.moves());
    json.put("why", step.why());
    json.put("early", step.early());
    return json;
  }
}
