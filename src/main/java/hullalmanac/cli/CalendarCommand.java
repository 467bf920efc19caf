package hullalmanac.cli;

import hullalmanac.service.CalendarService;
import hullalmanac.service.Fleet;
import hullalmanac.service.RecordService;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Writes the calendar. */
@Command(
    name = "calendar",
    description =
        "Writes visits, reminders, curing times and lay-ups into one calendar file to subscribe to.",
    mixinStandardHelpOptions = true)
final class CalendarCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE.ics",
      description = "a new file, or one that was written so before and is brought up to date")
  private Path file;

  @Option(names = "--private", description = "write keys, gate codes and absences too")
  private boolean withPrivate;

  @Override
  public Integer call() {
    try (RecordService record = parent.openReadOnly()) {
      Fleet fleet = Fleet.of(record.almanac(), record.today());
      CalendarService.Written written = new CalendarService(record).write(fleet, file, withPrivate);
      PrintWriter out = spec.commandLine().getOut();
      out.println(
          written.changed()
              ? "Written to " + file + ": " + written.events() + " events."
              : file + " is up to date: " + written.events() + " events.");
      if (written.privateLeftOut() > 0) {
        out.println(
            "Keys, gate codes and absences of "
                + (written.privateLeftOut() == 1 ? "1 berth" : written.privateLeftOut() + " berths")
                + " were left out; --private writes them too.");
      }
    }
    return 0;
  }
}
