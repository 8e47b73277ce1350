package entracte.cli;

import java.util.Arrays;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * The whole program, given its streams, its planner and what it hears: takes what was typed, gives
 * an exit code.
 */
final class Program {
  private static final int MEGABYTE_BITS = 20;

  private final Streams streams;
  private final Planning planning;
  private final Hearing hearing;

  Program(Streams streams, Planning planning, Hearing hearing) {
    this.streams = streams;
    this.planning = planning;
    this.hearing = hearing;
  }

  int run(String... args) {
    int code = guarded(args);
    return streams
        .close()
        .map(trouble -> complain(ExitCode.TROUBLE, "the output cannot be written: " + trouble))
        .orElse(code);
  }

  private int guarded(String... args) {
    try {
      CommandLine line = commandLine();
      return line.execute(explained(line, args));
    } catch (OutOfMemoryError e) {
      return tell(memoryIsFull());
    } catch (Error e) { // picocli hands on exceptions only
      return Mishap.report(e, streams);
    }
  }

  /** No mistake of ours: a set with many songs on a large rig needs what it needs. */
  private static Stop memoryIsFull() {
    long megabytes = Runtime.getRuntime().maxMemory() >> MEGABYTE_BITS;
    return Stop.trouble(
        "the " + megabytes + " MB of memory that Java may use are too few for this",
        "Allow more, as in: java -Xmx4g -jar target/entracte.jar; or take fewer songs at once.");
  }

  /** Many programs have a command "help"; here it asks a command to explain itself. */
  private static String[] explained(CommandLine line, String... args) {
    if (args.length == 0 || !args[0].equals("help")) {
      return args;
    }
    boolean unknown = args.length > 1 && !line.getSubcommands().containsKey(args[1]);
    String[] words = Arrays.copyOfRange(args, 1, args.length + (unknown ? 0 : 1));
    if (!unknown) {
      words[args.length - 1] = "--help";
    }
    return words;
  }

  CommandLine commandLine() {
    CommandLine line =
        new CommandLine(new RootCommand(streams))
            .addSubcommand(new NewCommand(streams))
            .addSubcommand(new CheckCommand(streams, hearing))
            .addSubcommand(new PortsCommand(streams))
            .addSubcommand(new StageCommand(streams, planning))
            .addSubcommand(new PlanCommand(streams, planning, hearing))
            .addSubcommand(new OrderCommand(streams, planning))
            .addSubcommand(new WhatIfCommand(streams, planning))
            .addSubcommand(new SheetCommand(streams, planning))
            .addSubcommand(new RehearseCommand(streams, planning, hearing))
            .addSubcommand(new CompletionCommand(streams));
    return line.setExpandAtFiles(false)
        .setOut(streams.out())
        .setErr(streams.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(streams.colour() ? Ansi.ON : Ansi.OFF))
        .setUsageHelpWidth(PlanText.WIDTH)
        .setParameterExceptionHandler((problem, typed) -> new WrongUsage(streams).tell(problem))
        .setExecutionExceptionHandler((problem, command, typed) -> stopped(problem));
  }

  private int stopped(Exception problem) {
    return problem instanceof Stop stop ? tell(stop) : Mishap.report(problem, streams);
  }

  private int tell(Stop stop) {
    stop.tell(streams);
    return stop.exitCode();
  }

  private int complain(int code, String message) {
    streams.complain("entracte: " + message);
    return code;
  }
}
