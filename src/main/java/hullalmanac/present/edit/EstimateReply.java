package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.With;
import hullalmanac.core.takings.Answering;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is written of an answer to an estimate before it counts. */
final class EstimateReply {
  static final String FORM = "reply";
  private static final String SIGNATURE = "signature";
  private static final int VISIT_IN_DAYS = 7;

  private Optional<Draft<Given>> draft = Optional.empty();
  private Optional<String> trouble = Optional.empty();

  /**
   * The answer; public so that it can be copied with one component changed.
   *
   * @param option name of the one that was chosen; empty while none is
   * @param visitDay the day for which the visit is planned
   */
  public record Given(
      String option,
      LocalDate day,
      String note,
      LocalDate visitDay,
      String signedBy,
      Optional<Signature> signature) {
    Answering.Accepted accepted() {
      return new Answering.Accepted(option, day, note, signedBy, signature, visitDay);
    }
  }

  private Draft<Given> draft(Fleet fleet) {
    if (draft.isEmpty()) {
      draft =
          Optional.of(
              new Draft<>(
                  FORM,
                  new Given(
                      "",
                      fleet.asOf(),
                      "",
                      fleet.asOf().plusDays(VISIT_IN_DAYS),
                      "",
                      Optional.empty())));
    }
    return draft.get();
  }

  private static List<FieldOf<Given>> fields(Fleet fleet, Estimate estimate) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    List<String> names = new ArrayList<>(List.of(""));
    estimate.options().forEach(o -> names.add(o.name()));
    return List.of(
        new FieldOf<>(
            "option",
            "Which option",
            new Input.Choice(names),
            Given::option,
            (g, typed) -> {
              var entry = FieldMaker.oneOf(names, typed);
              return entry instanceof Entry.Empty<String>
                  ? new Entry.Read<>(With.component(g, "option", ""), "")
                  : entry.map(n -> With.component(g, "option", n));
            }),
        make.day("day", "Answered on", Given::day),
        make.day("visitDay", "Plan the visit for", Given::visitDay),
        make.line("note", "What was said", Given::note),
        make.line("signedBy", "Accepted by (name)", Given::signedBy));
  }

  /** What is drawn; it has a field of its own, outside of the form. */
  private static FieldOf<Given> signature() {
    return new FieldOf<>(
        SIGNATURE,
        "Signature",
        new Input.Line(""),
        g -> g.signature().map(Signature::text).orElse(""),
        (g, drawn) -> {
          try {
            return new Entry.Read<>(
                With.component(
                    g,
                    SIGNATURE,
                    Optional.of(drawn).filter(d -> !d.isBlank()).map(Signature::parse)),
                "");
          } catch (IllegalArgumentException e) {
            return new Entry.Refused<>(Texts.capital(e.getMessage()) + ".");
          }
        });
  }

  private static List<FieldOf<Given>> all(Fleet fleet, Estimate estimate) {
    return Stream.concat(fields(fleet, estimate).stream(), Stream.of(signature())).toList();
  }

  SheetState.Form form(Fleet fleet, Estimate estimate) {
    return draft(fleet).form("The answer", fields(fleet, estimate));
  }

  /** The field to sign in. */
  SheetState.Sign sign(Fleet fleet) {
    return new SheetState.Sign(
        new At(FORM, "", SIGNATURE),
        "",
        "Who accepts can sign here with the pointer; a name above does as well.",
        signature().text().apply(draft(fleet).value()),
        true);
  }

  Optional<String> trouble() {
    return trouble;
  }

  Said say(Fleet fleet, Estimate estimate, At at, String text) {
    return draft(fleet).say(all(fleet, estimate), at, text);
  }

  void enter(Fleet fleet, Estimate estimate, At at, String text) {
    draft(fleet).enter(all(fleet, estimate), at, text);
    trouble = Optional.empty();
  }

  /** Whether all that is needed was written; what is missing is said otherwise. */
  boolean ready(Fleet fleet, Estimate estimate, boolean accepts) {
    trouble = draft(fleet).trouble(all(fleet, estimate));
    if (trouble.isEmpty() && accepts && draft(fleet).value().option().isBlank()) {
      trouble = Optional.of("Say which option was accepted.");
    }
    return trouble.isEmpty();
  }

  Given given(Fleet fleet) {
    return draft(fleet).value();
  }
}
