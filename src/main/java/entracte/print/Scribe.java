package entracte.print;

import entracte.cue.CaseMap;
import java.util.List;

/** Takes down what an {@link Author} dictates, on paper or as plain text. */
interface Scribe {
  /** Begins a new sheet. */
  void section(Part part, String title);

  void heading(String text);

  void text(String text);

  void caution(String text);

  /**
   * Something to do and tick off.
   *
   * @param number its place in the order of the hands; empty if the order does not matter
   */
  void tick(String number, String text);

  /** Nothing if there are no items. */
  void labelled(String label, List<String> items);

  void entry(Entry entry);

  /**
   * What stands below a list of songs.
   *
   * @param lacking said besides where the list is set densely: where to find what it leaves out
   */
  void closing(String text, String lacking);

  /** A line across the paper, with what comes under it. */
  void line(String label);

  /** The places of the moves on the case. */
  void picture(CaseMap map, List<Place> places);

  /**
   * One song in a list of songs.
   *
   * @param right what stands at the right edge
   * @param extra what is left out where a list is set densely: other papers have it, too
   */
  record Entry(String number, String title, String right, String details, String extra) {
    String everything() {
      String between = details.isEmpty() || extra.isEmpty() ? "" : "; ";
      return details + between + extra;
    }
  }
}
