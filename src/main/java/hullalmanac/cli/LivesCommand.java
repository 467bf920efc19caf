package hullalmanac.cli;

import hullalmanac.service.LivesTable;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits lives from a file. */
@Command(
    name = "lives",
    description =
        "Fits lives seen only in part: log-normal and Weibull by maximum likelihood, and Kaplan-Meier or Turnbull.",
    mixinStandardHelpOptions = true)
final class LivesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE.csv",
      description =
          "columns lower,upper: equal for an end that was seen, upper empty for one not seen")
  private Path file;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text or json; otherwise text")
  private String format;

  @Override
  public Integer call() {
    if (!format.equals("text") && !format.equals("json")) {
      throw new GivenWrong("--format: there is no \"" + format + "\"; write text or json");
    }
    LivesTable.Outcome outcome = LivesTable.read(file);
    if (outcome instanceof LivesTable.Refused refused) {
      throw new GivenWrong(refused.lines());
    }
    LivesTable table = ((LivesTable.Done) outcome).table();
    spec.commandLine().getOut().print(format.equals("json") ? table.json() : table.text());
    return 0;
  }
}
