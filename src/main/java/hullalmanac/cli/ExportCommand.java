package hullalmanac.cli;

import hullalmanac.service.ExportService;
import hullalmanac.service.RecordService;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Writes a record out as lists. */
@Command(
    name = "export",
    description =
        "Writes the whole record into a folder of CSV lists, with its photos and a page"
            + " (index.html) that shows all of it in any browser.",
    mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FOLDER",
      description = "a new or empty folder, or one with an earlier export")
  private Path folder;

  @Option(names = "--private", description = "write keys, gate codes and absences too")
  private boolean withSecrets;

  @Option(
      names = "--papers",
      description =
          "write papers as PDF too: each boat's history, each invoice, what is due, how long"
              + " products last, the takings of each year; takes a while")
  private boolean withPapers;

  @Override
  public Integer call() {
    try (RecordService record = parent.openReadOnly()) {
      ExportService.Done done = ExportService.export(record, folder, withSecrets, withPapers);
      spec.commandLine().getOut().println("Written to " + folder + ".");
      if (done.secretsLeftOut() > 0) {
        spec.commandLine()
            .getOut()
            .println(
                "Keys, gate codes and absences of "
                    + done.secretsLeftOut()
                    + " berths were left out; --private writes them too.");
      }
      done.missing().stream()
          .map(
              f -> "The picture " + f + " is not in the record's folder any more; it was left out.")
          .forEach(spec.commandLine().getErr()::println);
    }
    return 0;
  }
}
