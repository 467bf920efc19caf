package hullalmanac.cli;

import hullalmanac.service.RecordService;
import java.nio.file.Path;
import java.util.function.ToIntFunction;

/**
 * What the command line is given by the program.
 *
 * @param surroundings what records are opened with
 * @param defaultRecord the record folder used when none is named
 * @param version of the program
 * @param window opens the window and returns the exit code
 */
public record CliContext(
    RecordService.Surroundings surroundings,
    Path defaultRecord,
    String version,
    ToIntFunction<WindowRequest> window) {

  /**
   * A request to open the window.
   *
   * @param record the record folder
   * @param sample whether to open a scratch copy of the sample instead
   */
  public record WindowRequest(Path record, boolean sample) {}
}
