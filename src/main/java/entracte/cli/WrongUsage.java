package entracte.cli;

import entracte.finding.NearestName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with what was typed, and what was probably meant. */
final class WrongUsage {
  private final Streams streams;

  WrongUsage(Streams streams) {
    this.streams = streams;
  }

  int tell(ParameterException problem) {
    CommandLine command = problem.getCommandLine();
    streams.complain("entracte: " + message(problem, command));
    advice(problem, command).forEach(line -> streams.complain("  " + line));
    return ExitCode.WRONG_USAGE;
  }

  private static String message(ParameterException problem, CommandLine command) {
    if (problem instanceof UnmatchedArgumentException unmatched) {
      return unknown(named(unmatched), command);
    }
    if (problem instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing(missing.getMissing().get(0), command);
    }
    if (problem instanceof OverwrittenOptionException twice
        && twice.getOverwritten() instanceof OptionSpec option) {
      return option.longestName() + " is there twice";
    }
    if (problem.getArgSpec() instanceof OptionSpec option && option.arity().max() == 0) {
      return option.longestName() + " takes no value";
    }
    return problem.getCause() instanceof TypeConversionException wrong
        ? wrong.getMessage()
        : problem.getMessage();
  }

  /** The first word that nothing takes; an option without the value that stands behind it. */
  private static String named(UnmatchedArgumentException unmatched) {
    String typed = unmatched.getUnmatched().get(0);
    return typed.startsWith("-") ? typed.replaceFirst("(?s)=.*", "") : typed;
  }

  private static String unknown(String typed, CommandLine command) {
    if (typed.startsWith("-")) {
      return "no option is called " + typed;
    }
    if (isRoot(command)) {
      return "no command is called " + typed;
    }
    return takesNames(command)
        ? "too many names: " + typed
        : command.getCommandName() + " takes no name, and there is " + typed;
  }

  private static String missing(ArgSpec missing, CommandLine command) {
    if (missing instanceof OptionSpec option) {
      return command.getCommandName()
          + " needs "
          + option.shortestName()
          + " "
          + option.paramLabel();
    }
    return command.getCommandName()
        + (missing.paramLabel().equals("FOLDER")
            ? " needs the name of a folder to write into"
            : " needs a set: its folder or its file");
  }

  private static List<String> advice(ParameterException problem, CommandLine command) {
    List<String> advice = new ArrayList<>();
    if (problem instanceof UnmatchedArgumentException unmatched) {
      String typed = named(unmatched);
      Optional<String> near = near(typed, known(typed, command));
      near.ifPresent(n -> advice.add("Did you mean " + n + "?"));
      if (!typed.startsWith("-") && takesNames(command)) {
        advice.add("A name that holds blanks is put in quotation marks.");
      }
    }
    boolean distance = command.getCommandSpec().optionsMap().containsKey("--distance");
    if (distance && message(problem, command).equals("--from is there twice")) {
      advice.add("Say with --from where the rig starts, and with --distance where the eye is.");
    }
    advice.add("Add --help to see what can be typed.");
    return advice;
  }

  /** Who shortens a word writes its beginning, and perhaps an s or a point behind it. */
  private static Optional<String> near(String typed, List<String> known) {
    for (int cut = 0; cut < Math.min(2, typed.length()); cut++) {
      String beginning = typed.substring(0, typed.length() - cut);
      List<String> begun = known.stream().filter(name -> name.startsWith(beginning)).toList();
      if (begun.size() == 1) {
        return Optional.of(begun.get(0));
      }
    }
    return NearestName.of(typed, known);
  }

  private static List<String> known(String typed, CommandLine command) {
    return typed.startsWith("-")
        ? List.copyOf(command.getCommandSpec().optionsMap().keySet())
        : List.copyOf(command.getSubcommands().keySet());
  }

  private static boolean takesNames(CommandLine command) {
    return !command.getCommandSpec().positionalParameters().isEmpty();
  }

  private static boolean isRoot(CommandLine command) {
    return command.getParent() == null;
  }
}
