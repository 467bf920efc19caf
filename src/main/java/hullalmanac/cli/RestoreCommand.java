package hullalmanac.cli;

import hullalmanac.service.RecordService;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Puts a copy in the place of a record. */
@Command(
    name = "restore",
    description =
        "Puts a verified copy in the place of the record; the record as it stands is kept beside it.",
    mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Option(names = "--list", description = "only list the copies there are, newest first")
  private boolean list;

  @Option(
      names = "--copy",
      paramLabel = "FILE",
      description = "the copy to restore; otherwise the newest")
  private Path copy;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<Path> copies = RecordService.copies(parent.record());
    if (list) {
      copies.forEach(out::println);
      return 0;
    }
    if (copy == null && copies.isEmpty()) {
      throw new GivenWrong("There is no copy in " + parent.record().resolve("copies") + ".");
    }
    Path chosen = Optional.ofNullable(copy).orElseGet(() -> copies.get(0));
    Optional<Path> aside =
        RecordService.restore(parent.record(), chosen, parent.context().surroundings());
    out.println("Restored " + chosen + ".");
    aside.ifPresent(p -> out.println("The record that stood there is kept in " + p + "."));
    return 0;
  }
}
