package entracte.cli;

/** Where the program begins. */
public final class Main {
  private Main() {}

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(new Program(Streams.real(), new QuickCompiler(), Hearing.real()).run(args));
  }
}
