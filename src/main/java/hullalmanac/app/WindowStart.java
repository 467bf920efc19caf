package hullalmanac.app;

import hullalmanac.cli.CliContext;
import hullalmanac.service.DueList;
import hullalmanac.service.Fleet;
import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Opens the window on a record, or prints what is due where there is no display. */
final class WindowStart {
  /** Returned in the place of an exit code while the window stays open. */
  static final int STAYS_OPEN = -1;

  private final RecordService.Surroundings surroundings;
  private final AppFolders folders;
  private final AppLog log;
  private final PrintWriter out;

  WindowStart(
      RecordService.Surroundings surroundings, AppFolders folders, AppLog log, PrintWriter out) {
    this.surroundings = surroundings;
    this.folders = folders;
    this.log = log;
    this.out = out;
  }

  int open(CliContext.WindowRequest request) {
    Path record = request.sample() ? scratchSample() : request.record();
    if (GraphicsEnvironment.isHeadless()) {
      return print(record);
    }
    log.start();
    folders.state();
    return print(record);
  }

  private int print(Path record) {
    out.println("There is no display, so the window cannot open. What is due in " + record + ":");
    out.println();
    try (RecordService open = RecordService.openReadOnly(record, surroundings)) {
      out.print(DueList.of(Fleet.of(open.almanac(), open.today())).text());
    }
    out.flush();
    return 0;
  }

  private Path scratchSample() {
    try {
      Path scratch = Files.createTempDirectory("hull-almanac-sample-");
      SampleService.write(scratch);
      return scratch;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
