package entracte.cue;

/**
 * A pace from common practice: nobody was found who measured it. A rehearsed cord move (think,
 * reach, pull, reach, plug) takes some 4 to 5 seconds, a knob to a mark 2 to 3, a switch 1 to 1.5,
 * an oscillator tuned by beats 5 to 10 or with a tuner 10 to 20; fetching a cord costs 3 more, and
 * crossing rows 2. Six cords, eight knobs and one oscillator then take about a minute.
 */
final class EstimatedPace implements Pace {
  private static final double PULL_ONE_PLUG = 1.5;
  private static final double PLUG_ONE_PLUG = 3;
  private static final double FETCH_CORD = 3;
  private static final double CROSS_ROWS = 2;
  private static final double SWITCH = 1.25;
  private static final double TURN = 2.5;
  private static final double TUNE = 10;
  private static final double LEVEL = 1.5;

  @Override
  public double seconds(Step step) {
    double crossing = step.crossesRows() ? CROSS_ROWS : 0;
    return switch (step.verb()) {
      case LOWER, RAISE -> LEVEL;
      case PULL -> step.moves() * PULL_ONE_PLUG + crossing;
      case MOVE -> PULL_ONE_PLUG + PLUG_ONE_PLUG + crossing;
      case PLUG -> step.moves() * PLUG_ONE_PLUG + crossing + (step.wholeCord() ? FETCH_CORD : 0);
      case SWITCH -> SWITCH;
      case TURN -> TURN;
      case TUNE -> TUNE;
    };
  }
}
