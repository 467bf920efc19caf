package hullalmanac.cli;

import hullalmanac.service.RecordService;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The program itself: without a command it opens the window. */
@Command(
    name = "hull-almanac",
    description =
        "Keeps a boat-care business's record and says which boats are due for protection, and why.",
    footer = {
      "",
      "Without a command the window opens. Exit codes: 0 done, 1 something given is wrong, 2 wrong usage,",
      "3 something is due (remind).",
      "Nothing ever leaves this computer."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class HullAlmanacCommand implements Callable<Integer> {
  private final CliContext context;

  @Option(
      names = "--records",
      paramLabel = "DIR",
      description = "the record folder; otherwise HullAlmanac in your home folder")
  private Path records;

  @Option(
      names = "--sample",
      description = "open the window on a scratch copy of the sample record")
  private boolean sample;

  HullAlmanacCommand(CliContext context) {
    this.context = context;
  }

  CliContext context() {
    return context;
  }

  /** The record folder to work on. */
  Path record() {
    return Optional.ofNullable(records).orElse(context.defaultRecord());
  }

  /** Opens the record only to read. */
  RecordService openReadOnly() {
    return RecordService.openReadOnly(record(), context.surroundings());
  }

  @Override
  public Integer call() {
    return context.window().applyAsInt(new CliContext.WindowRequest(record(), sample));
  }
}
