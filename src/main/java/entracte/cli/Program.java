package entracte.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * The whole program, given its streams, its planner and what it hears: takes what was typed, gives
 * an exit code.
 */
final class Program {
  private static final int MEGABYTE_BITS = 20;

  /** Needs to know all commands. */
  private static final String COMPLETION = "completion";

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
      CommandLine line = commandLine(args);
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

  /** All commands, in the order of the help. */
  private Map<String, Supplier<Object>> commands() {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("new", () -> new NewCommand(streams));
    commands.put("check", () -> new CheckCommand(streams, hearing, planning));
    commands.put("ports", () -> new PortsCommand(streams));
    commands.put("stage", () -> new StageCommand(streams, planning));
    commands.put("plan", () -> new PlanCommand(streams, planning, hearing));
    commands.put("order", () -> new OrderCommand(streams, planning));
    commands.put("whatif", () -> new WhatIfCommand(streams, planning));
    commands.put("sheet", () -> new SheetCommand(streams, planning));
    commands.put("rehearse", () -> new RehearseCommand(streams, planning, hearing));
    commands.put(COMPLETION, () -> new CompletionCommand(streams));
    return commands;
  }

  CommandLine commandLine() {
    return commandLine(name -> true);
  }

  /** Takes up the command typed alone, if there is one: all of them would lengthen every start. */
  private CommandLine commandLine(String... args) {
    boolean one = args.length > 0 && commands().containsKey(args[0]) && !args[0].equals(COMPLETION);
    return one ? commandLine(args[0]::equals) : commandLine();
  }

  private CommandLine commandLine(Predicate<String> which) {
    CommandLine line = new CommandLine(new RootCommand(streams));
    commands()
        .forEach(
            (name, command) -> {
              if (which.test(name)) {
                line.addSubcommand(command.get());
              }
            });
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
