package hullalmanac.cli;

import hullalmanac.service.ImportService;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Brings a set of lists into a record. */
@Command(
    name = "import",
    description =
        "Brings a folder of CSV lists into the record, all of it or nothing; makes the record if there is none.",
    mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "the folder with the lists")
  private Path folder;

  @Override
  public Integer call() {
    ImportService service = new ImportService(parent.context().surroundings());
    ImportService.Outcome outcome = service.into(parent.record(), folder);
    if (outcome instanceof ImportService.Refused refused) {
      throw new GivenWrong(refused.lines());
    }
    int rows = ((ImportService.Done) outcome).rows();
    spec.commandLine().getOut().println("Brought in " + rows + " rows from " + folder + ".");
    return 0;
  }
}
