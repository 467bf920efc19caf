package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.life.BoatDue;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.With;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Practice values about one thing, each with its standard, and what setting them since the sheet
 * was opened did to the dates.
 */
public final class PracticeSheet extends FleetSheet {
  private final PracticeValue.Topic topic;
  private final Rows<Set> values;
  private Optional<Map<Id<Boat>, LocalDate>> before = Optional.empty();

  /** A value, and what a business has set it to. */
  private record Set(PracticeValue value, Optional<Double> own) {}

  public PracticeSheet(Desk desk, PracticeValue.Topic topic) {
    super(desk);
    this.topic = topic;
    values =
        new Rows<>(
            new Rows.Block<>(
                topic.code(),
                "",
                this::rows,
                s -> s.value().code(),
                s -> s.value().words(),
                f -> fields(),
                PracticeSheet::set),
            desk);
  }

  private List<Set> rows(Fleet fleet) {
    Practice practice = fleet.almanac().business().practice();
    return topic.all().stream()
        .map(v -> new Set(v, Optional.ofNullable(practice.own().get(v))))
        .toList();
  }

  private static Change set(Almanac almanac, Set set) {
    Practice practice = almanac.business().practice().with(set.value(), set.own());
    return become(almanac, practice);
  }

  private static Change become(Almanac almanac, Practice practice) {
    return new Change.Ready(
        new Edit(
            Optional.of(With.component(almanac.business(), "practice", practice)),
            List.of(),
            List.of()));
  }

  private static List<FieldOf<Set>> fields() {
    return List.of(
        new FieldOf<>(
            "own",
            "Yours",
            new Input.Line(""),
            s -> s.own().map(PracticeSheet::number).orElse(""),
            PracticeSheet::typed),
        fixed("standard", "Standard", s -> number(s.value().standard())),
        fixed("from", "From", s -> number(s.value().lowest())),
        fixed("to", "To", s -> number(s.value().highest())),
        fixed("origin", "Where the standard is from", s -> PracticeValue.ORIGIN));
  }

  private static FieldOf<Set> fixed(String id, String label, Function<Set, String> text) {
    return new FieldOf<>(
        id,
        label,
        new Input.Fixed(),
        text,
        (row, typed) -> new Entry.Refused<>("This cannot be set."));
  }

  private static Entry<Set> typed(Set row, String typed) {
    Entry<BigDecimal> entry = NumberEntry.read(typed);
    if (entry instanceof Entry.Empty<BigDecimal>) {
      return new Entry.Read<>(
          new Set(row.value(), Optional.empty()),
          "the standard, " + number(row.value().standard()));
    }
    if (entry instanceof Entry.Refused<BigDecimal> refused) {
      return new Entry.Refused<>(refused.sentence());
    }
    double number = ((Entry.Read<BigDecimal>) entry).value().doubleValue();
    try {
      Practice.STANDARD.with(row.value(), Optional.of(number));
    } catch (IllegalArgumentException e) {
      return new Entry.Refused<>(Texts.capital(e.getMessage()) + ".");
    }
    return new Entry.Read<>(new Set(row.value(), Optional.of(number)), "");
  }

  /** A number as people write it: no more than three places that say something. */
  private static String number(double value) {
    return Numbers.plain(
        new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_UP)).doubleValue());
  }

  @Override
  public void show(Fleet fleet) {
    if (before.isEmpty()) {
      before = Optional.of(dates(fleet));
    }
    super.show(fleet);
  }

  /** The first day by which each boat is best worked on. */
  private static Map<Id<Boat>, LocalDate> dates(Fleet fleet) {
    Map<Id<Boat>, LocalDate> dates = new LinkedHashMap<>();
    for (BoatDue due : fleet.due()) {
      due.workBy().ifPresent(day -> dates.merge(due.boat().id(), day, PracticeSheet::earlier));
    }
    return dates;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(values);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(values.grid(fleet, "Value", ""));
    blocks.add(
        new SheetState.Words(
            "An empty cell under Yours stands for the standard. Setting a value is an act like any"
                + " other: Ctrl+Z takes it back."));
    blocks.add(
        new SheetState.Buttons(
            List.of(new SheetState.Button("reset", "All on this page to the standard", false))));
    if (topic.dates()) {
      blocks.add(effect(fleet));
    }
    return new SheetState(
        topic.words(),
        topic.about()
            + ". The "
            + (topic.dates() ? "forecast starts" : "plans start")
            + " from these numbers; your own record teaches "
            + (topic.dates() ? "it" : "them")
            + " better.",
        blocks,
        Optional.empty());
  }

  private SheetState.Block effect(Fleet fleet) {
    Map<Id<Boat>, LocalDate> now = dates(fleet);
    Map<Id<Boat>, LocalDate> then = before.orElse(now);
    DateWords words = new DateWords(fleet.asOf());
    List<List<String>> rows = new ArrayList<>();
    for (Boat boat : fleet.almanac().boats()) {
      LocalDate was = then.get(boat.id());
      LocalDate is = now.get(boat.id());
      if (was != null && is != null && !was.equals(is)) {
        rows.add(List.of(boat.name(), words.exact(was), words.exact(is), moved(was, is)));
      }
    }
    return new SheetState.Table(
        rows.isEmpty() ? "" : rows.size() + " of " + now.size() + " boats fall due on another day",
        List.of("Boat", "Before", "Now", "Moved"),
        rows,
        "What a change does to the dates stands here once you make one.");
  }

  private static String moved(LocalDate was, LocalDate is) {
    long days = ChronoUnit.DAYS.between(was, is);
    return Math.abs(days)
        + (Math.abs(days) == 1 ? " day " : " days ")
        + (days < 0 ? "earlier" : "later");
  }

  @Override
  public void press(String button) {
    desk.change(
        topic.words() + ", back to the standards",
        almanac -> {
          Practice practice = almanac.business().practice();
          for (PracticeValue value : topic.all()) {
            practice = practice.with(value, Optional.empty());
          }
          return practice.equals(almanac.business().practice())
              ? new Change.Ready(Edit.put(List.of()))
              : become(almanac, practice);
        });
  }

  @Override
  public Topic topic() {
    return Topic.PRACTICE;
  }
}
