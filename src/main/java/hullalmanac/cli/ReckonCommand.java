package hullalmanac.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Small sums that need no record. */
@Command(
    name = "reckon",
    description = "Reckons without a record: the sun, the dew point, a hull number, lives.",
    mixinStandardHelpOptions = true)
final class ReckonCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "say what to reckon: sun, dew, hin or lives");
  }
}
