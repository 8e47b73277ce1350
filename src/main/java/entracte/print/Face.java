package entracte.print;

/** The two faces of the one font. */
enum Face {
  PLAIN("DejaVuSansCondensed.ttf"),
  BOLD("DejaVuSansCondensed-Bold.ttf");

  private final String file;

  Face(String file) {
    this.file = file;
  }

  /** Where its outlines lie among the program's resources. */
  String resource() {
    return "letters/" + file;
  }
}
