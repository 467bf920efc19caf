package hullalmanac.present.edit;

import hullalmanac.core.entry.ClimateEntry;
import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.TimeEntry;
import hullalmanac.core.reckon.CoatingWindow;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.present.sheet.Input;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** The reading of air and surface at a step, and whether a coat may be laid by it. */
final class ClimateFields {
  private ClimateFields() {}

  /** The reading as one text: air, humidity, surface and time. */
  static FieldOf<Step> of(Almanac almanac, LocalDateTime now) {
    return new FieldOf<>(
        "climate",
        "Air, humidity, surface",
        new Input.Line("18.5 62 21 10:30"),
        step -> step.climate().map(c -> ClimateEntry.write(c, step.day())).orElse(""),
        (step, typed) ->
            FieldMaker.maybe(
                step, "climate", judged(ClimateEntry.read(typed, step.day(), now), almanac, step)));
  }

  /** Says with a reading what it meant when it was taken. */
  private static Entry<Climate> judged(Entry<Climate> entry, Almanac almanac, Step step) {
    return entry instanceof Entry.Read<Climate> read
        ? new Entry.Read<>(
            read.value(),
            read.echo()
                + ". "
                + CoatingWindow.then(read.value(), limits(almanac, step), false).words())
        : entry;
  }

  private static Optional<Product> product(Almanac almanac, Step step) {
    return step.product()
        .flatMap(id -> almanac.products().stream().filter(p -> p.id().equals(id)).findFirst());
  }

  private static Product.Handling limits(Almanac almanac, Step step) {
    return product(almanac, step).map(Product::handling).orElse(Product.Handling.UNKNOWN);
  }

  /**
   * What the readings of a visit say: of work that is still to be done now, of other work when they
   * were taken.
   */
  static List<String> words(Almanac almanac, Visit visit, List<Step> steps, LocalDateTime now) {
    return steps.stream()
        .flatMap(
            step ->
                step
                    .climate()
                    .map(
                        climate -> {
                          boolean ahead =
                              visit.status() == VisitStatus.PLANNED
                                  && !step.day().isBefore(now.toLocalDate());
                          return words(almanac, step, climate, ahead ? now : climate.takenAt());
                        })
                    .stream())
        .toList();
  }

  private static String words(Almanac almanac, Step step, Climate climate, LocalDateTime by) {
    return "Reading of "
        + TimeEntry.write(climate.takenAt(), step.day())
        + " for "
        + product(almanac, step).map(Product::name).orElse(step.kind().words())
        + ". "
        + CoatingWindow.of(climate, limits(almanac, step), false, by).words()
        + ". The label comes first.";
  }
}
