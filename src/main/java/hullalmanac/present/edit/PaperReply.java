package hullalmanac.present.edit;

import hullalmanac.core.paper.Paper;
import hullalmanac.present.Desk;
import hullalmanac.service.Fleet;
import hullalmanac.service.PaperService;
import hullalmanac.service.Papers;
import java.util.List;
import java.util.Optional;

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

  /** Writes what is asked for. */
  void write(Fleet fleet, Papers.Asked asked) {
    begin();
    desk.ask(
        edits -> {
          Papers.Outcome outcome = new Papers(fleet).of(asked);
          return outcome instanceof Papers.Refused refused
              ? new Answer(Optional.empty(), refused.sentence())
              : new Answer(
                  Optional.of(edits.writePaper(((Papers.Ready) outcome).paper(), fleet.asOf())),
                  "");
        },
        this::said);
  }

  /** Writes a paper. */
  void write(Fleet fleet, Paper paper) {
    begin();
    desk.ask(
        edits -> new Answer(Optional.of(edits.writePaper(paper, fleet.asOf())), ""), this::said);
  }

  private void begin() {
    said = "Writing …";
    publish.run();
  }

  private record Answer(Optional<PaperService.Written> written, String refused) {}

  private void said(Answer answer) {
    List<String> lacking = answer.written().map(PaperService.Written::lacking).orElse(List.of());
    said =
        answer.written().map(w -> "Written to " + w.file() + ".").orElse(answer.refused())
            + (lacking.isEmpty() ? "" : " " + String.join(" ", lacking));
    publish.run();
  }
}
