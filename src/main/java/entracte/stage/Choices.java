package entracte.stage;

import entracte.cue.Change;
import entracte.stage.Menu.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The lines of each menu, as the moment has them. */
final class Choices {
  private final Draft draft;
  private final Night night;
  private final List<Choice> all = new ArrayList<>();

  private Choices(Draft draft, Night night) {
    this.draft = draft;
    this.night = night;
  }

  /** The lines that the menu's filter leaves. */
  static List<Choice> of(Draft draft, Night night, Menu menu) {
    Choices choices = new Choices(draft, night);
    choices.fill(menu);
    choices.all.add(new Choice("close this menu", d -> d.menu = Optional.empty(), true));
    String filter = letters(menu.filter());
    return choices.all.stream().filter(choice -> letters(choice.label()).contains(filter)).toList();
  }

  /** Blanks do not count: the space bar is one of the keys that feet use. */
  private static String letters(String text) {
    return text.replace(" ", "").toLowerCase(Locale.ROOT);
  }

  private void fill(Menu menu) {
    switch (menu.page()) {
      case MAIN -> main();
      case JUMP -> left().forEach(this::jump);
      case INSERT -> songs();
      case MOVES -> moves();
      case CORDS -> cords();
      case CORD_FROM -> jacks(Optional.empty());
      case CORD_TO -> jacks(Optional.of(menu.context()));
      case MODULES -> modules();
      case LOST -> lost();
    }
  }

  private void add(String label, java.util.function.Consumer<Draft> act) {
    all.add(new Choice(label, act));
  }

  private void main() {
    List<Integer> left = left();
    if (draft.phase == Phase.CHANGEOVER && draft.done.contains(Done.OPEN)) {
      add("every move is done", Amends::allDone);
      add("leave this move undone", Amends::leave);
    }
    add("send everything again", Steps::sendAgain);
    add("quiet: all gear silent, the place is kept", Steps::quiet);
    if (!night.past().isEmpty()) {
      add("take back: " + night.past().get(0).label(), Amends.undo(night));
    }
    if (!left.isEmpty()) {
      add("skip " + title(left.get(0)), Amends::skip);
      all.add(Choice.opens("jump to a later song", Page.JUMP));
    }
    all.add(Choice.opens("play another song next, then carry on", Page.INSERT));
    if (left.size() > 1) {
      add("swap " + title(left.get(0)) + " and " + title(left.get(1)), Amends::swap);
    }
    if (draft.way().isPresent()) {
      all.add(Choice.opens("not as planned: moves done or not", Page.MOVES));
    }
    all.add(Choice.opens("not as planned: a cord is not there", Page.CORDS));
    all.add(Choice.opens("not as planned: one more cord is plugged", Page.CORD_FROM));
    all.add(Choice.opens("a module is dead", Page.MODULES));
    all.add(Choice.opens("I am lost", Page.LOST));
    add("leave the stage", d -> d.effects.add(new Effect.Leave()));
  }

  /** The songs still to come, by their place in the order. */
  private List<Integer> left() {
    List<Integer> left = new ArrayList<>();
    for (int index = draft.ahead(); index < draft.order.size(); index++) {
      left.add(index);
    }
    return left;
  }

  private String title(int index) {
    return draft.song(index).title();
  }

  private void jump(int index) {
    add(title(index), d -> Amends.jump(d, index));
  }

  private void songs() {
    for (int song : draft.show.order()) {
      add(draft.show.title(song), d -> Amends.insert(d, song));
    }
  }

  private void moves() {
    List<Move> moves = draft.way().map(Way::moves).orElse(List.of());
    add("plan again from here", Amends::planAgain);
    for (int index = 0; index < moves.size(); index++) {
      int move = index;
      String mark = draft.done.get(move) == Done.DONE ? "done: " : "open: ";
      add(mark + moves.get(move).text(), d -> Amends.toggle(d, move));
    }
  }

  private void cords() {
    for (Change.Plugged cord : draft.state().rig().cords()) {
      add(cord.source() + " to " + cord.sink(), d -> Amends.cordIsNotThere(d, cord));
    }
  }

  private void jacks(Optional<String> from) {
    TrueRig rig = draft.state().rig();
    for (String jack : draft.show.jacks()) {
      if (!rig.takes(jack) && !Optional.of(jack).equals(from)) {
        all.add(jack(jack, from));
      }
    }
  }

  private static Choice jack(String jack, Optional<String> from) {
    return from.isEmpty()
        ? new Choice(jack, d -> d.menu = Optional.of(new Menu(Page.CORD_TO, 0, "", jack)), true)
        : new Choice(jack, d -> Amends.cordIsThere(d, from.get(), jack));
  }

  private void modules() {
    draft.show.modules().stream()
        .map(spot -> spot.module())
        .filter(module -> !draft.dead.contains(module))
        .forEach(module -> add(module, d -> Amends.dies(d, module)));
  }

  private void lost() {
    add("silence: main level down, all gear quiet", Amends::silence);
    draft.show.drone().ifPresent(song -> add("a drone in a few moves", d -> Amends.drone(d, song)));
    draft.show.fallback().ifPresent(this::fallback);
    boolean another =
        draft.ahead() < draft.order.size()
            && !draft.show.fallback().equals(Optional.of(draft.order.get(draft.ahead())));
    if (another) {
      String title = title(draft.ahead());
      add("pull every cord, then build " + title, Amends::fromNothing);
    }
  }

  private void fallback(int song) {
    String title = draft.show.title(song);
    add(title + ", from what is plugged", d -> Amends.insert(d, song));
    add(
        "pull every cord, then build " + title,
        d -> {
          Amends.insert(d, song);
          d.effects.removeIf(Effect.Plan.class::isInstance); // its plan, not what it sent
          Amends.fromNothing(d);
        });
  }
}
