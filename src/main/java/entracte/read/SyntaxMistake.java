package entracte.read;

import entracte.finding.Place;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;

/** Says in plain words what SnakeYAML could not read. */
final class SyntaxMistake {
  private SyntaxMistake() {}

  static void note(YAMLException mistake, TextFile file, Notebook notes) {
    String message = String.valueOf(mistake.getMessage());
    Place place = file.place(0, 0);
    if (mistake instanceof MarkedYAMLException marked) {
      Mark mark =
          marked.getProblemMark() == null ? marked.getContextMark() : marked.getProblemMark();
      place = mark == null ? place : file.place(mark.getLine(), mark.getColumn());
      message = String.valueOf(marked.getProblem());
    }
    notes.error(place, message, "");
  }
}
