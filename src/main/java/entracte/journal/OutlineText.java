package entracte.journal;

import entracte.cue.GearSends;
import entracte.cue.Spot;
import entracte.journal.Fields.In;
import entracte.journal.Fields.Out;
import entracte.stage.Basis;
import entracte.stage.Show;
import entracte.stage.ShowSong;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a night is played by as fields and back. */
final class OutlineText {
  private static final int NONE = -1;

  private OutlineText() {}

  static void write(Out out, Basis basis) {
    ShowText.write(out, basis.files());
    out.add(basis.outline().isPresent());
    basis.outline().ifPresent(show -> write(out, show));
  }

  /** Nothing is known where an earlier version wrote the line. */
  static Basis basis(In in) {
    Map<String, String> files = new LinkedHashMap<>(ShowText.positions(in));
    return new Basis(files, in.goesOn() && in.yes() ? Optional.of(show(in)) : Optional.empty());
  }

  private static void write(Out out, Show show) {
    out.add(show.set());
    out.each(show.songs(), song -> write(out, song));
    out.each(show.modules(), spot -> out.add(spot.module()).add(spot.row()).add(spot.centreCm()));
    out.each(show.jacks(), out::add);
    out.add(!show.quiet().isEmpty());
    out.add(show.fallback().orElse(NONE)).add(show.drone().orElse(NONE));
    out.add(show.hold().name()).add(show.deafMillis());
  }

  private static Show show(In in) {
    return new Show(
        in.text(),
        in.each(OutlineText::song),
        in.each(spot -> new Spot(spot.text(), spot.whole(), spot.figure(), 0)),
        in.each(In::text),
        ShowSong.sending(in.yes()),
        OptionalDouble.empty(),
        song(in.whole()),
        song(in.whole()),
        Show.Hold.valueOf(in.text()),
        in.wide());
  }

  private static Optional<Integer> song(int index) {
    return index == NONE ? Optional.empty() : Optional.of(index);
  }

  private static void write(Out out, ShowSong song) {
    out.add(song.title()).add(song.encore());
    out.add(!song.sends().changeover().isEmpty()).add(!song.sends().song().isEmpty());
    out.each(
        song.sends().sections(),
        section -> out.add(section.name()).add(!section.sends().isEmpty()));
  }

  private static ShowSong song(In in) {
    String title = in.text();
    boolean encore = in.yes();
    GearSends sends =
        new GearSends(
            ShowSong.sending(in.yes()),
            ShowSong.sending(in.yes()),
            in.each(part -> new GearSends.Section(part.text(), ShowSong.sending(part.yes()))));
    return ShowSong.outline(title, encore, sends);
  }
}
