package hullalmanac.core.calendar;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Uid;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A visit in the calendar, and how long what it lays must stay dry.
 *
 * @param withPrivate whether keys, gate codes and absences are told
 */
record VisitEvents(RowsByOwner rows, Revisions revisions, boolean withPrivate) {
  /** Nine in the morning of the day before (common practice, no source). */
  private static final int DAY_BEFORE = -15;

  private static final int HOURS_A_DAY = 24;

  /** The visit itself. */
  CalendarEvent visit(Visit visit) {
    LocalDate first = visit.day();
    LocalDate last =
        Stream.concat(
                rows.steps(visit).stream().map(Step::day),
                visit.surfaces().stream().flatMap(p -> p.doneOn().stream()))
            .filter(d -> d.isAfter(first))
            .max(LocalDate::compareTo)
            .orElse(first);
    Optional<Berth> berth = rows.berth(visit.boat(), first);
    CalendarEvent event =
        new CalendarEvent(
            Uid.of(Uid.Of.VISIT, visit.id()),
            EventKind.VISIT,
            first,
            last.plusDays(1),
            Optional.empty(),
            new CalendarEvent.Words(
                rows.boat(visit.boat()).name() + ": " + work(visit),
                berth.map(rows::where).orElse(""),
                text(visit, berth)),
            false,
            visit.status() == VisitStatus.PLANNED ? Optional.of(DAY_BEFORE) : Optional.empty(),
            revisions.of(visit));
    return visit.status() == VisitStatus.CANCELLED ? event.away() : event;
  }

  private String work(Visit visit) {
    if (visit.plan().isPresent()) {
      return rows.plan(visit.plan().get()).work();
    }
    String steps =
        rows.steps(visit).stream()
            .map(Step::kind)
            .filter(kind -> kind != StepKind.INSPECT)
            .map(Coded::words)
            .distinct()
            .collect(Collectors.joining(", "));
    if (!steps.isEmpty()) {
      return steps;
    }
    String surfaces = RowsByOwner.few(rows.names(visit));
    String what = visit.why() == VisitWhy.COMPLAINT ? "a complaint" : "a visit";
    return surfaces.isEmpty() ? what : what + ", " + surfaces;
  }

  private String text(Visit visit, Optional<Berth> berth) {
    List<String> lines = new ArrayList<>();
    lines.add(Texts.capital(String.join(", ", rows.names(visit))));
    if (berth.isPresent()) {
      Berth.Access access = berth.get().access();
      lines.add(line("Hours", access.hours()));
      lines.add(line("Tide", access.tide()));
    }
    if (withPrivate && berth.isPresent()) {
      Berth.Private secrets = berth.get().secrets();
      lines.add(line("Keys", secrets.keys()));
      lines.add(line("Gate code", secrets.gateCode()));
      lines.add(line("Away", secrets.absence()));
    }
    return lines.stream().filter(l -> !l.isBlank()).collect(Collectors.joining("\n"));
  }

  private static String line(String what, String text) {
    return text.isBlank() ? "" : what + ": " + text;
  }

  /**
   * The days from which on and until whose end something laid in a visit must stay dry; nothing
   * where nothing is laid, or where no product says how long it cures.
   */
  Optional<CalendarEvent> cure(Visit visit) {
    List<Step> laying = rows.steps(visit).stream().filter(s -> cureHours(s).isPresent()).toList();
    if (laying.isEmpty() || visit.status() == VisitStatus.CANCELLED) {
      return Optional.empty();
    }
    LocalDate last = laying.stream().map(this::dryUntil).max(LocalDate::compareTo).orElseThrow();
    String products =
        laying.stream()
            .map(s -> product(s).name() + ", " + cureHours(s).orElseThrow() + " hours")
            .distinct()
            .collect(Collectors.joining("; "));
    return Optional.of(
        new CalendarEvent(
            Uid.of(Uid.Of.CURE, visit.id()),
            EventKind.CURE,
            laying.get(0).day(),
            last.plusDays(1),
            Optional.empty(),
            new CalendarEvent.Words(
                rows.boat(visit.boat()).name() + ": curing, keep dry",
                rows.berth(visit.boat(), visit.day()).map(rows::where).orElse(""),
                "Curing: "
                    + products
                    + ".\nKeep it dry, and do not wash, polish or cover it before. The product's own"
                    + " label and data sheet come first."),
            false,
            Optional.empty(),
            revisions.of(visit)));
  }

  private Optional<Integer> cureHours(Step step) {
    boolean lays = step.kind() == StepKind.PROTECT || step.kind() == StepKind.TOP;
    return step.product()
        .filter(p -> lays)
        .flatMap(p -> rows.product(p).handling().cureHours())
        .filter(hours -> hours > 0);
  }

  private Product product(Step step) {
    return rows.product(step.product().orElseThrow());
  }

  /** The last day on which what a step laid must stay dry, begun days counted as whole ones. */
  private LocalDate dryUntil(Step step) {
    int hours = cureHours(step).orElseThrow();
    return step.day().plusDays((hours + HOURS_A_DAY - 1) / HOURS_A_DAY);
  }
}
