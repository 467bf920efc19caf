package hullalmanac.cli;

import hullalmanac.service.SampleService;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the sample record. */
@Command(
    name = "sample",
    description = "Writes the sample record of an invented business into a new or empty folder.",
    mixinStandardHelpOptions = true)
final class SampleCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "a new or empty folder")
  private Path folder;

  @Override
  public Integer call() {
    SampleService.write(folder);
    spec.commandLine().getOut().println("The sample record is in " + folder + ".");
    return 0;
  }
}
