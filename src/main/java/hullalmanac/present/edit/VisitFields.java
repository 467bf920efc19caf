package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.present.edit.FieldMaker.Named;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.words.TimedWords;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Fields of a visit and of its steps. */
final class VisitFields {
  private final FieldMaker make;

  VisitFields(FieldMaker make) {
    this.make = make;
  }

  /**
   * @param busyOn how busy one is on a day by another calendar
   */
  List<FieldOf<Visit>> visit(Visit visit, Function<LocalDate, Optional<String>> busyOn) {
    List<FieldOf<Visit>> fields = new ArrayList<>();
    fields.add(
        visit.status() == VisitStatus.PLANNED
            ? busy(make.day("day", "Day", Visit::day), busyOn)
            : make.day("day", "First day", Visit::day));
    if (!visit.moves().isEmpty()) {
      fields.add(movedBecause());
    }
    fields.add(make.choice("why", "Why", VisitWhy.class, Visit::why));
    if (visit.status() == VisitStatus.DONE) {
      fields.add(make.choice("handover", "Handed over", Handover.class, Visit::handover));
    } else {
      fields.add(cancelledBecause());
    }
    fields.add(make.paragraph("note", "Note", Visit::note));
    return fields;
  }

  /** A day that says beside it how busy one is then. */
  private static FieldOf<Visit> busy(
      FieldOf<Visit> day, Function<LocalDate, Optional<String>> busyOn) {
    return new FieldOf<>(
        day.id(),
        day.label(),
        day.input(),
        day.text(),
        (visit, typed) ->
            day.enter().apply(visit, typed) instanceof Entry.Read<Visit> read
                ? new Entry.Read<>(
                    read.value(),
                    read.echo()
                        + busyOn.apply(read.value().day()).map(words -> "; " + words).orElse(""))
                : day.enter().apply(visit, typed));
  }

  private static FieldOf<Visit> cancelledBecause() {
    List<String> words = new ArrayList<>(FieldMaker.words(MoveReason.class));
    words.add(0, "");
    return new FieldOf<>(
        "cancelled",
        "Cancelled because of",
        new Input.Choice(words),
        v -> v.cancelled().map(MoveReason::words).orElse(""),
        (v, typed) -> {
          Entry<MoveReason> entry = FieldMaker.oneOf(MoveReason.class, typed);
          Optional<MoveReason> reason =
              entry instanceof Entry.Read<MoveReason> read
                  ? Optional.of(read.value())
                  : Optional.empty();
          return entry instanceof Entry.Refused<MoveReason> refused
              ? new Entry.Refused<>(refused.sentence())
              : new Entry.Read<>(cancelled(v, reason), "");
        });
  }

  private static Visit cancelled(Visit v, Optional<MoveReason> reason) {
    return new Visit(
        v.id(),
        v.key(),
        v.boat(),
        v.day(),
        reason.isPresent() ? VisitStatus.CANCELLED : VisitStatus.PLANNED,
        v.why(),
        v.plan(),
        reason,
        v.handover(),
        v.surfaces(),
        v.moves(),
        v.note());
  }

  private static FieldOf<Visit> movedBecause() {
    return new FieldOf<>(
        "moves",
        "Moved because of",
        new Input.Choice(FieldMaker.words(MoveReason.class)),
        v -> last(v).reason().words(),
        (v, typed) ->
            FieldMaker.oneOf(MoveReason.class, typed).map(reason -> movedBecause(v, reason)));
  }

  private static Visit.Move last(Visit v) {
    return v.moves().get(v.moves().size() - 1);
  }

  private static Visit movedBecause(Visit v, MoveReason reason) {
    List<Visit.Move> moves = new ArrayList<>(v.moves());
    moves.set(moves.size() - 1, new Visit.Move(last(v).from(), last(v).to(), reason));
    return With.component(v, "moves", moves);
  }

  /**
   * @param now when a reading without a time is taken
   */
  List<FieldOf<Step>> step(Almanac almanac, List<Surface> surfaces, LocalDateTime now) {
    List<Named<Product>> products =
        almanac.products().stream().map(p -> new Named<>(p.id(), p.name())).toList();
    List<Named<Bottle>> bottles =
        almanac.bottles().stream().map(b -> new Named<>(b.id(), bottle(almanac, b))).toList();
    return List.of(
        make.choice("kind", "Step", StepKind.class, Step::kind),
        where(surfaces),
        make.maybeOf("product", "Product", products, Step::product),
        make.maybeOf("bottle", "Batch", bottles, Step::bottle),
        make.maybeWhole("partsWater", "Parts water", Step::partsWater),
        make.line("pad", "Pad", Step::pad),
        make.line("speed", "Speed", Step::speed),
        make.maybeWhole("passes", "Passes", Step::passes),
        make.maybeWhole("minutes", "Minutes", Step::minutes),
        make.maybeWhole("helperMinutes", "Helper’s", Step::helperMinutes),
        make.day("day", "Day", Step::day),
        ClimateFields.of(almanac, now),
        make.line("note", "Note", Step::note));
  }

  /** Starts and stops to time a step. */
  static FieldOf<Step> time(TimedWords words) {
    FieldOf<Step> press =
        FieldMaker.unwritten("time", "Time", new Input.Press("ctrl M"), words::press);
    return new FieldOf<>(
        press.id(),
        press.label(),
        press.input(),
        press.text(),
        (step, typed) -> {
          String said = words.running(step).map(r -> Texts.capital(r) + ". ").orElse("");
          String does = step.timedSince().isPresent() ? "stops it" : "starts to time it";
          Entry<Step> entry = press.enter().apply(step, typed);
          return entry instanceof Entry.Read<Step> read
              ? new Entry.Read<>(read.value(), said + "Enter or Ctrl+M " + does + ".")
              : entry;
        });
  }

  private static String bottle(Almanac almanac, Bottle bottle) {
    String product =
        almanac.products().stream()
            .filter(p -> p.id().equals(bottle.product()))
            .map(Product::name)
            .findFirst()
            .orElse("");
    return bottle.batch() + ", " + product;
  }

  /** On which surfaces: nothing is the whole boat, names as they begin, parted by commas. */
  private static FieldOf<Step> where(List<Surface> surfaces) {
    return new FieldOf<>(
        "surfaces",
        "Where",
        new Input.Line("whole boat"),
        step -> where(step.surfaces(), surfaces),
        (step, typed) -> {
          String text = typed.strip().toLowerCase(Locale.ROOT);
          if (text.isEmpty() || text.equals("whole boat")) {
            return new Entry.Read<>(With.component(step, "surfaces", List.of()), "whole boat");
          }
          List<Id<Surface>> chosen = new ArrayList<>();
          for (String name : text.split("\\s*[;+]\\s*|\\s*,(?!\\s*(?:port|starboard))\\s*")) {
            List<Surface> begun =
                surfaces.stream()
                    .filter(s -> s.words().toLowerCase(Locale.ROOT).startsWith(name.strip()))
                    .toList();
            if (begun.isEmpty()) {
              return new Entry.Refused<>(
                  "She has no surface " + name + "; write as in topsides; transom.");
            }
            begun.stream().map(Surface::id).filter(i -> !chosen.contains(i)).forEach(chosen::add);
          }
          return new Entry.Read<>(
              With.component(step, "surfaces", List.copyOf(chosen)), where(chosen, surfaces));
        });
  }

  private static String where(List<Id<Surface>> chosen, List<Surface> surfaces) {
    return chosen.isEmpty()
        ? "whole boat"
        : surfaces.stream()
            .filter(s -> chosen.contains(s.id()))
            .map(Surface::words)
            .collect(Collectors.joining("; "));
  }
}
