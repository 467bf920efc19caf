package hullalmanac.cli;

import hullalmanac.core.record.RecordException;
import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;

/** Runs the command line. */
public final class Cli {
  private static final int GIVEN_WRONG = 1;
  private static final int WRONG_USAGE = 2;

  private Cli() {}

  /**
   * Runs what was asked for. What should not happen at all is thrown on.
   *
   * @return the exit code: 0 done, 1 something given is wrong, 2 wrong usage, 3 something is due
   *     ({@code remind})
   */
  public static int run(CliContext context, PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = new CommandLine(new HullAlmanacCommand(context));
    line.addSubcommand(new DueCommand());
    line.addSubcommand(new RemindCommand());
    line.addSubcommand(new AccountsCommand());
    line.addSubcommand(new ReportCommand());
    line.addSubcommand(new ImportCommand());
    line.addSubcommand(new ExportCommand());
    line.addSubcommand(new CalendarCommand());
    line.addSubcommand(new ContactsCommand());
    line.addSubcommand(new RestoreCommand());
    line.addSubcommand(new SampleCommand());
    line.addSubcommand(
        new CommandLine(new ReckonCommand())
            .addSubcommand(new SunCommand())
            .addSubcommand(new DewCommand())
            .addSubcommand(new HinCommand())
            .addSubcommand(new LivesCommand()));
    line.setOut(out);
    line.setErr(err);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    line.setParameterExceptionHandler((e, args) -> usage(e, err));
    AtomicReference<RuntimeException> unexpected = new AtomicReference<>();
    line.setExecutionExceptionHandler((e, at, parsed) -> wrong(e, err, unexpected));
    int code = line.execute(arguments);
    out.flush();
    err.flush();
    if (unexpected.get() != null) {
      throw unexpected.get();
    }
    return code;
  }

  private static int usage(ParameterException e, PrintWriter err) {
    err.println(e.getMessage());
    err.println("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return WRONG_USAGE;
  }

  private static int wrong(
      Exception e, PrintWriter err, AtomicReference<RuntimeException> unexpected) {
    if (e instanceof GivenWrong given) {
      given.lines().forEach(err::println);
    } else if (e instanceof RecordException) {
      err.println(e.getMessage());
    } else {
      unexpected.set(e instanceof RuntimeException r ? r : new IllegalStateException(e));
    }
    return GIVEN_WRONG;
  }
}
