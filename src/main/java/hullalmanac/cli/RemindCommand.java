package hullalmanac.cli;

import hullalmanac.service.Fleet;
import hullalmanac.service.RecordService;
import hullalmanac.service.ToTell;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Says in one line whose owners are to be told, for a script that runs at login. */
@Command(
    name = "remind",
    description = {
      "Says in one line which boats are due to be told.",
      "Exit code 3 when there are any, 0 when there are none."
    },
    mixinStandardHelpOptions = true)
final class RemindCommand implements Callable<Integer> {
  private static final int SOMETHING_IS_DUE = 3;

  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "the day to look from, as 2026-05-01; otherwise today, or the day of a sample")
  private String asOf;

  @Option(
      names = "--merge",
      description =
          "prints who is to be told of what as CSV, a line each, for a letter to many (mail merge)")
  private boolean merge;

  @Override
  public Integer call() {
    try (RecordService record = parent.openReadOnly()) {
      LocalDate day = asOf == null ? record.today() : Given.day("--as-of", asOf);
      ToTell toTell = ToTell.of(Fleet.dueOf(record.almanac(), day));
      if (merge) {
        spec.commandLine().getOut().print(toTell.mailMerge());
      } else {
        spec.commandLine().getOut().println(toTell.line());
      }
      return toTell.boats().isEmpty() ? 0 : SOMETHING_IS_DUE;
    }
  }
}
