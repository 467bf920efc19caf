package hullalmanac.present.shell;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.work.Change;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import java.time.LocalDate;
import java.util.Optional;

/** An act that says when it was refused. */
interface Deed {
  /** Does it; the reason where it was refused. */
  Optional<String> refused();

  /** Does it and reads the record; touches the file. */
  default After done(FleetService service, EditService edits) {
    Optional<String> refused = refused();
    return new After(
        refused, refused.isPresent() ? Optional.empty() : Optional.of(Read.of(service, edits)));
  }

  /** Why a change was refused; nothing where it was done. */
  static Optional<String> refusal(Change outcome) {
    return outcome instanceof Change.Refused refused
        ? Optional.of(refused.problems().get(0).sentence())
        : Optional.empty();
  }

  /** What a deed left: a refusal, or the record as it stands then. */
  record After(Optional<String> refused, Optional<Read> read) {}

  /** The record as it was read, and what stands at the bottom of the window then. */
  record Read(Almanac almanac, LocalDate today, String status, EditService.Standing standing) {
    static Read of(FleetService service, EditService edits) {
      return new Read(service.read(), service.today(), service.status(), edits.standing());
    }

    /** What stands at the bottom; of the sample, also which day it takes for today. */
    String words() {
      return almanac.business().asOf().isPresent()
          ? "Sample record, opened as of " + DateWords.full(today) + " · " + status
          : status;
    }
  }
}
