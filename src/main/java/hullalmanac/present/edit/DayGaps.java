package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Stopwatch;
import hullalmanac.core.work.VisitGaps;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is missing of the visits of a day, with a field for what can be said in a word. A field that
 * was shown once stays until the day is left, filled in or not.
 */
final class DayGaps {
  static final String BLOCK = "gaps ";
  private static final String HANDOVER = "handover";
  private static final String MINUTES = "minutes ";

  private final Desk desk;
  private final Rows<Step> minutes;
  private final Rows<Visit> handover;
  private final Set<Id<?>> asked = new HashSet<>();

  DayGaps(Desk desk) {
    this.desk = desk;
    minutes =
        new Rows<>(
            new Rows.Block<>(
                "minutes",
                "",
                f -> f.almanac().steps(),
                s -> s.id().toString(),
                s -> s.kind().words(),
                f -> List.of(make(f).maybeWhole("minutes", "minutes", Step::minutes)),
                this::minutes),
            desk);
    handover =
        new Rows<>(
            new Rows.Block<>(
                HANDOVER,
                "",
                f -> f.almanac().visits(),
                v -> v.id().toString(),
                v -> "visit of " + v.day(),
                f ->
                    List.of(
                        make(f).choice(HANDOVER, "Handed over", Handover.class, Visit::handover)),
                (almanac, visit) -> Change.checked(almanac, Edit.put(visit))),
            desk);
  }

  private Change minutes(Almanac almanac, Step now) {
    Step before =
        almanac.steps().stream().filter(s -> s.id().equals(now.id())).findFirst().orElseThrow();
    Instant at = desk.now().toInstant();
    return Change.checked(almanac, Edit.put(Stopwatch.written(before, now, at)));
  }

  private static FieldMaker make(Fleet fleet) {
    return new FieldMaker(fleet.almanac().business(), fleet.asOf());
  }

  /** Begins another day. */
  void forget() {
    asked.clear();
  }

  /** Keeps in mind what is asked for now. */
  void remember(Fleet fleet, Round round) {
    for (Visit visit : round.visits()) {
      for (VisitGaps.Gap gap : gaps(fleet, round, visit)) {
        if (gap instanceof VisitGaps.NoMinutes no) {
          asked.add(no.step().id());
        } else if (gap instanceof VisitGaps.NoHandover) {
          asked.add(visit.id());
        }
      }
    }
  }

  private static List<VisitGaps.Gap> gaps(Fleet fleet, Round round, Visit visit) {
    return VisitGaps.of(fleet.almanac(), visit, round.day());
  }

  /** What is missing of each visit; those of which nothing is are named together. */
  List<SheetState.Block> blocks(Fleet fleet, Round round) {
    List<SheetState.Block> blocks = new ArrayList<>();
    List<String> whole = new ArrayList<>();
    for (Visit visit : round.visits()) {
      List<VisitGaps.Gap> gaps = gaps(fleet, round, visit);
      List<SheetState.Field> fields = fields(fleet, visit);
      if (gaps.isEmpty() && fields.isEmpty()) {
        whole.add(round.label(visit.id()));
      } else {
        blocks.addAll(blocks(fleet, round, visit, fields));
      }
    }
    if (!whole.isEmpty()) {
      blocks.add(new SheetState.Form("whole", "Nothing is missing", List.of()));
      blocks.add(new SheetState.Words(String.join(", ", whole)));
    }
    return blocks;
  }

  private List<SheetState.Block> blocks(
      Fleet fleet, Round round, Visit visit, List<SheetState.Field> fields) {
    List<VisitGaps.Gap> gaps = gaps(fleet, round, visit);
    String id = visit.id().toString();
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(
        new SheetState.Form("about " + id, "Missing: " + round.label(visit.id()), List.of()));
    List<String> words = words(fleet, gaps);
    if (gaps.isEmpty()) {
      blocks.add(new SheetState.Words("Nothing any more."));
    } else if (!words.isEmpty()) {
      blocks.add(new SheetState.Words(String.join("\n", words)));
    }
    if (!fields.isEmpty()) {
      blocks.add(new SheetState.Form(BLOCK + id, "", fields));
    }
    if (!words.isEmpty()) {
      blocks.add(
          new SheetState.Buttons(
              List.of(
                  new SheetState.Button(
                      "open " + id, "Open the visit: " + round.label(visit.id()), false))));
    }
    return blocks;
  }

  private List<SheetState.Field> fields(Fleet fleet, Visit visit) {
    List<SheetState.Field> fields = new ArrayList<>();
    List<Step> steps =
        fleet.almanac().steps().stream()
            .filter(s -> s.visit().equals(visit.id()))
            .sorted(java.util.Comparator.comparingInt(Step::order))
            .toList();
    for (int n = 0; n < steps.size(); n++) {
      if (asked.contains(steps.get(n).id())) {
        fields.add(
            called(
                minutes.fields(fleet, steps.get(n)).get(0),
                MINUTES + steps.get(n).id(),
                "Minutes of step " + (n + 1) + ", " + steps.get(n).kind().words()));
      }
    }
    if (asked.contains(visit.id())) {
      fields.add(handover.fields(fleet, visit).get(0));
    }
    return fields;
  }

  private static SheetState.Field called(SheetState.Field field, String id, String label) {
    return new SheetState.Field(id, label, field.input(), field.text(), field.said());
  }

  /** What cannot be said in a word. */
  private static List<String> words(Fleet fleet, List<VisitGaps.Gap> gaps) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    List<String> words = new ArrayList<>();
    Map<Id<Product>, List<Surface>> unbatched = new LinkedHashMap<>();
    List<Surface> unseen = new ArrayList<>();
    List<Surface> untold = new ArrayList<>();
    for (VisitGaps.Gap gap : gaps) {
      if (gap instanceof VisitGaps.StillPlanned still) {
        words.add(planned(still.day(), fleet.asOf()));
      } else if (gap instanceof VisitGaps.NoBatch no) {
        unbatched
            .computeIfAbsent(no.coat().product(), p -> new ArrayList<>())
            .add(lookups.surface(no.coat().surface()));
      } else if (gap instanceof VisitGaps.NotLooked no) {
        unseen.add(no.surface());
      } else if (gap instanceof VisitGaps.Untold no) {
        untold.add(no.surface());
      }
    }
    if (!untold.isEmpty()) {
      words.add(
          ForecastWords.surfaces(untold)
              + ": damage that nobody was told of yet. Say in the visit who was told.");
    }
    unbatched.forEach(
        (product, surfaces) ->
            words.add(
                ForecastWords.surfaces(surfaces)
                    + ": no batch of "
                    + lookups.product(product).name()
                    + " is written down. Name the bottle in the visit."));
    if (!unseen.isEmpty()) {
      words.add(
          ForecastWords.surfaces(unseen)
              + ": the old coat came off, and nobody wrote down what water did before. If you"
              + " looked, say so in the visit.");
    }
    return words;
  }

  private static String planned(LocalDate day, LocalDate today) {
    return day.equals(today)
        ? "Still planned for today. Open it to finish it, or to move it."
        : "Still planned, though its day is over. Open it to finish it, or to move it.";
  }

  /** Names the row behind a field of a visit's form. */
  private static Optional<At> behind(At at) {
    if (!at.block().startsWith(BLOCK)) {
      return Optional.empty();
    }
    return Optional.of(
        at.field().equals(HANDOVER)
            ? new At(HANDOVER, at.block().substring(BLOCK.length()), HANDOVER)
            : new At("minutes", at.field().substring(MINUTES.length()), "minutes"));
  }

  private Rows<?> rows(At at) {
    return at.block().equals(HANDOVER) ? handover : minutes;
  }

  Said say(Fleet fleet, At at, String text) {
    return behind(at).map(b -> rows(b).say(fleet, b, text)).orElse(Said.NOTHING);
  }

  /** Takes a text; says whether it was taken. */
  boolean enter(Fleet fleet, At at, String text) {
    return behind(at).map(b -> rows(b).enter(fleet, b, text)).orElse(false);
  }

  /** Names of the visits of which something is missing. */
  static String missing(Fleet fleet, Round round) {
    return round.visits().stream()
        .filter(v -> !gaps(fleet, round, v).isEmpty())
        .map(v -> round.label(v.id()))
        .collect(Collectors.joining(", "));
  }
}
