package hullalmanac.present.edit;

import hullalmanac.core.paper.Paper;
import hullalmanac.present.Desk;
import hullalmanac.service.Fleet;
import hullalmanac.service.PaperService;
import hullalmanac.service.Papers;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes papers into the record for a sheet, and says what came of it. */
final class PaperReply {
  /** The button that writes the paper of a sheet. */
  static final String BUTTON = "pdf";

  private final Desk desk;
  private final Runnable publish;
  private String said = "";

  /**
   * @param publish shows the sheet again
   */
  PaperReply(Desk desk, Runnable publish) {
    this.desk = desk;
    this.publish = publish;
  }

  /** What is to be said; empty before anything was written. */
  String said() {
    return said;
  }

  /** Writes what is asked for; what stands on it is reckoned beside the writing of the record. */
  void write(Fleet fleet, Papers.Asked asked) {
    say("Writing …");
    desk.reckon(
        () -> new Papers(fleet).of(asked),
        outcome -> {
          if (outcome instanceof Papers.Ready ready) {
            write(fleet, ready.paper());
          } else {
            say(((Papers.Refused) outcome).sentence());
          }
        });
  }

  /** Writes a paper. */
  void write(Fleet fleet, Paper paper) {
    say("Writing …");
    desk.ask(edits -> edits.writePaper(paper, fleet.asOf()), this::written);
  }

  private void written(PaperService.Written written) {
    say(
        Stream.concat(Stream.of("Written to " + written.file() + "."), written.lacking().stream())
            .collect(Collectors.joining(" ")));
  }

  private void say(String words) {
    said = words;
    publish.run();
  }
}
