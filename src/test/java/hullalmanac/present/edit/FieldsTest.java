package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.words.TimedWords;
import hullalmanac.sample.SampleRecord;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields as texts and back, over all rows of the sample. */
@Tag("slow")
class FieldsTest {
  private static final Almanac SAMPLE = SampleRecord.make().almanac();
  private static final FieldMaker MAKE =
      new FieldMaker(SAMPLE.business(), LocalDate.of(2026, 5, 1));
  private static final BoatFields BOAT = new BoatFields(MAKE);
  private static final List<String> PEOPLE = List.of("Ian Thrift", "Ida Brook");

  private static <T> void everyTextReadsBack(List<T> rows, List<FieldOf<T>> fields) {
    assertThat(rows).isNotEmpty();
    for (T row : rows) {
      for (FieldOf<T> field : fields) {
        String text = field.text().apply(row);
        Entry<T> entry = field.enter().apply(row, text);
        assertThat(entry).as(field.id() + " of " + row).isInstanceOf(Entry.Read.class);
        assertThat(field.text().apply(((Entry.Read<T>) entry).value())).isEqualTo(text);
      }
    }
  }

  @Test
  void whatAFieldShowsReadsBackAsTheSame() {
    everyTextReadsBack(SAMPLE.boats(), BOAT.boat());
    everyTextReadsBack(SAMPLE.surfaces(), BOAT.surface());
    everyTextReadsBack(SAMPLE.berths(), BOAT.berth(SAMPLE.harbours()));
    everyTextReadsBack(SAMPLE.berths(), BOAT.access());
    everyTextReadsBack(SAMPLE.roles(), BOAT.role(SAMPLE.parties()));
    everyTextReadsBack(SAMPLE.carePlans(), BOAT.plan());
    everyTextReadsBack(SAMPLE.parties(), PartyFields.of(MAKE));
    everyTextReadsBack(
        SAMPLE.steps(),
        new VisitFields(MAKE)
            .step(SAMPLE, SAMPLE.surfaces(), LocalDate.of(2026, 5, 1).atTime(11, 20)).stream()
                .filter(f -> !f.id().equals("surfaces"))
                .toList());
    for (Visit visit : SAMPLE.visits().subList(0, 60)) {
      everyTextReadsBack(
          List.of(visit), new VisitFields(MAKE).visit(visit, day -> Optional.empty()));
      everyTextReadsBack(looked(visit), LookedFields.of(MAKE));
    }
  }

  /** Names are only of one boat; some have a comma of their own, such as topsides, port. */
  @Test
  void whereAStepWasDoneReadsBackAsTheSame() {
    List<Boat> sided =
        SAMPLE.boats().stream()
            .filter(b -> surfaces(b).stream().anyMatch(x -> x.words().contains(", port")))
            .toList();
    assertThat(sided).isNotEmpty();
    for (Boat boat : sided) {
      List<Surface> all = surfaces(boat);
      List<FieldOf<Step>> where =
          new VisitFields(MAKE)
              .step(SAMPLE, all, LocalDate.of(2026, 5, 1).atTime(11, 20)).stream()
                  .filter(f -> f.id().equals("surfaces"))
                  .toList();
      Step step = SAMPLE.steps().get(0);
      for (int most = 1; most <= all.size(); most++) {
        List<Id<Surface>> some = all.subList(0, most).stream().map(Surface::id).toList();
        everyTextReadsBack(List.of(With.component(step, "surfaces", some)), where);
      }
    }
  }

  private static List<Surface> surfaces(Boat boat) {
    return SAMPLE.surfaces().stream().filter(s -> s.boat().equals(boat.id())).toList();
  }

  private static List<Looked> looked(Visit visit) {
    return Looked.all(SAMPLE, visit, MAKE.today());
  }

  @Test
  void whatAFieldOfDamageShowsReadsBackAsTheSame() {
    List<Looked> damaged =
        SAMPLE.visits().stream()
            .flatMap(v -> looked(v).stream())
            .filter(row -> row.seen().containsKey("damage"))
            .toList();
    assertThat(damaged).anyMatch(row -> told(row).isPresent()).anyMatch(row -> told(row).isEmpty());
    everyTextReadsBack(damaged, DamageFields.of(MAKE, PEOPLE));
  }

  @Test
  void whatStartsAndStopsTheTimeReadsBackAsTheSame() {
    ZonedDateTime now = ZonedDateTime.of(2026, 5, 1, 14, 39, 0, 0, ZoneOffset.UTC);
    Step step = SAMPLE.steps().get(0);
    Instant since = now.minusMinutes(37).toInstant();
    Step timed = With.component(step, "timedSince", Optional.of(since));
    everyTextReadsBack(List.of(step, timed), List.of(VisitFields.time(new TimedWords(now))));
    FieldOf<Step> time = VisitFields.time(new TimedWords(now));
    assertThat(time.text().apply(step)).isEqualTo("Start");
    assertThat(time.text().apply(timed)).isEqualTo("Stop · 37 min");
    assertThat(time.say(timed, "Stop · 37 min").words())
        .isEqualTo("Running since 14:02, 37 min so far. Enter or Ctrl+M stops it.");
    assertThat(time.say(step, "x").refused()).isTrue();
  }

  private static Optional<Observation.Told> told(Looked row) {
    return ((Observation.Damage) row.seen().get("damage")).told();
  }

  private static Looked damaged() {
    Looked row = looked(SAMPLE.visits().get(0)).get(0);
    return row.with("damage", Optional.of(new Observation.Damage("chip")));
  }

  private static <T> T read(List<FieldOf<T>> fields, T row, String field, String typed) {
    Entry<T> entry =
        fields.stream()
            .filter(f -> f.id().equals(field))
            .findFirst()
            .orElseThrow()
            .enter()
            .apply(row, typed);
    return ((Entry.Read<T>) entry).value();
  }

  private static Said say(List<FieldOf<Looked>> fields, Looked row, String field, String typed) {
    return fields.stream()
        .filter(f -> f.id().equals(field))
        .findFirst()
        .orElseThrow()
        .say(row, typed);
  }

  @ParameterizedTest
  @CsvSource({
    "id, Ida Brook",
    "Ida Brook, Ida Brook",
    "the yard, the yard",
    "i, i",
    "nell, nell",
  })
  void whoWasToldIsANameAsItBeginsOrFreeWords(String typed, String whom) {
    Looked told = read(DamageFields.of(MAKE, PEOPLE), damaged(), "toldWhom", typed);
    assertThat(told(told)).contains(new Observation.Told(whom, MAKE.today()));
    assertThat(say(DamageFields.of(MAKE, PEOPLE), damaged(), "toldWhom", typed).words())
        .isEqualTo("told " + whom);
  }

  @Test
  void nobodyWasToldUntilSomebodyWasAndTheDayFollows() {
    List<FieldOf<Looked>> fields = DamageFields.of(MAKE, PEOPLE);
    assertThat(fields.get(1).text().apply(damaged())).isEqualTo("nobody yet");
    assertThat(say(fields, damaged(), "toldOn", "today").words())
        .isEqualTo("Write first who was told.");
    Looked told = read(fields, damaged(), "toldWhom", "ida");
    Looked earlier = read(fields, told, "toldOn", "yesterday");
    assertThat(told(earlier).orElseThrow().on()).isEqualTo(MAKE.today().minusDays(1));
    assertThat(say(fields, told, "toldOn", "tomorrow").refused()).isTrue();
    assertThat(say(fields, told, "toldOn", "").refused()).isTrue();
    Looked other = read(fields, earlier, "toldWhom", "the yard");
    assertThat(told(other).orElseThrow().on()).isEqualTo(MAKE.today().minusDays(1));
    assertThat(told(read(fields, earlier, "damage", "a long chip"))).isEqualTo(told(earlier));
    for (String nobody : List.of("", "nobody", "no", "nobody yet")) {
      assertThat(told(read(fields, earlier, "toldWhom", nobody))).isEmpty();
    }
    assertThat(read(fields, earlier, "damage", "").seen()).doesNotContainKey("damage");
  }

  private static Looked part(Optional<WorkState> state) {
    return looked(SAMPLE.visits().get(0)).get(0).worked(state);
  }

  @Test
  void whatWasDoneHasADayAndADaySaysThatItWasDone() {
    List<FieldOf<Looked>> fields = LookedFields.of(MAKE);
    Looked planned = part(Optional.of(WorkState.PLANNED));
    Looked done = read(fields, planned, "work", "d");
    assertThat(done.doneOn()).contains(planned.usualDay());
    Looked dated = read(fields, planned, "doneOn", "yesterday");
    assertThat(dated.work()).contains(WorkState.DONE);
    assertThat(dated.doneOn()).contains(MAKE.today().minusDays(1));
    assertThat(read(fields, dated, "work", "done")).isEqualTo(dated);
    assertThat(read(fields, dated, "work", "p").doneOn()).isEmpty();
    assertThat(say(fields, dated, "doneOn", "").words())
        .isEqualTo("What was done has its day; write planned or left under Work instead.");
    assertThat(read(fields, planned, "doneOn", "")).isEqualTo(planned);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"left, rain|rain", "l: rain|rain", "Left rain|rain", "left|"})
  void whyItWasLeftMayStandBehind(String typed, String note) {
    Looked left = read(LookedFields.of(MAKE), part(Optional.of(WorkState.PLANNED)), "work", typed);
    assertThat(left.work()).contains(WorkState.LEFT);
    assertThat(left.note()).isEqualTo(note == null ? "" : note);
    Looked noted = With.component(left, "note", "keel in slings");
    assertThat(read(LookedFields.of(MAKE), noted, "work", "left, rain").note())
        .isEqualTo("keel in slings; rain");
  }

  /** The last step on a surface gives the day; a day to come is none. */
  @Test
  void theUsualDayIsThatOfTheLastStepButNotAhead() {
    Visit visit =
        SAMPLE.visits().stream()
            .filter(v -> steps(v).stream().map(Step::day).distinct().count() > 1)
            .findFirst()
            .orElseThrow();
    for (Looked row : Looked.all(SAMPLE, visit, MAKE.today())) {
      LocalDate last =
          steps(visit).stream()
              .filter(s -> s.surfaces().isEmpty() || s.surfaces().contains(row.surface().id()))
              .map(Step::day)
              .max(LocalDate::compareTo)
              .orElseThrow();
      assertThat(row.usualDay()).isEqualTo(last);
    }
    assertThat(Looked.all(SAMPLE, visit, visit.day().minusDays(3)))
        .allMatch(row -> row.usualDay().equals(visit.day().minusDays(3)));
  }

  private static List<Step> steps(Visit visit) {
    return SAMPLE.steps().stream().filter(s -> s.visit().equals(visit.id())).toList();
  }

  private static Said say(String field, String typed) {
    Looked row = looked(SAMPLE.visits().get(0)).get(0);
    return LookedFields.of(MAKE).stream()
        .filter(f -> f.id().equals(field))
        .findFirst()
        .orElseThrow()
        .say(row, typed);
  }

  private static Observation seen(String field, String typed) {
    Looked row = looked(SAMPLE.visits().get(0)).get(0);
    Entry<Looked> entry =
        LookedFields.of(MAKE).stream()
            .filter(f -> f.id().equals(field))
            .findFirst()
            .orElseThrow()
            .enter()
            .apply(row, typed);
    return ((Entry.Read<Looked>) entry).value().seen().get(field);
  }

  @Test
  void readingsWithPointOrCommaAreTheSame() {
    assertThat(seen("gloss", "85,5 86")).isEqualTo(seen("gloss", "85.5 86"));
    assertThat(say("gloss", "85.5 86").words()).startsWith("85.8 ± 0.4 at 60°");
  }

  /**
   * ASTM D523: over 70 at 60° use 20°, under 10 use 85° (reference: values.md 4, from the
   * standard).
   */
  @ParameterizedTest
  @CsvSource({"69.9, false, false", "70.1, true, false", "9.9, false, true", "10.1, false, false"})
  void adviceOnTheAngleFollowsTheStandard(String reading, boolean twenty, boolean eightyFive) {
    assertThat(say("gloss", reading).words().contains("20°")).isEqualTo(twenty);
    assertThat(say("gloss", reading).words().contains("85°")).isEqualTo(eightyFive);
  }

  @Test
  void aRatingOfChalkingNeedsItsScale() {
    assertThat(say("chalking", "3").refused()).isTrue();
    assertThat(say("chalking", "iso 3").refused()).isFalse();
    assertThat(say("chalking", "iso 6").refused()).isTrue();
    assertThat(say("chalking", "a 8").words()).startsWith("ASTM D4214");
  }

  @Test
  void wordsAreTakenAsTheyBegin() {
    assertThat(seen("water", "b")).isEqualTo(seen("water", "beads"));
    assertThat(say("water", "x").words()).isEqualTo("Write one of beads, sheets, flat.");
    assertThat(say("eye", "6").refused()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ZZZ65122E606 | built May 2006, model year 2006",
        "too short | not of the usual form: ",
      })
  void aHullNumberSaysWhatItSays(String typed, String said) {
    assertThat(BoatFields.hullNumber(typed).words()).startsWith(said);
  }

  @Test
  void lengthsStandInTheBusinesssUnitsAndAreReadInBoth() {
    FieldMaker metres =
        new FieldMaker(
            hullalmanac.core.record.With.component(
                SAMPLE.business(), "units", Business.Units.METRES),
            LocalDate.of(2026, 5, 1));
    var loa = new BoatFields(metres).boat().get(2);
    var boat = SAMPLE.boats().get(0);
    var read = (Entry.Read<hullalmanac.core.record.Boat>) loa.enter().apply(boat, "32' 6\"");
    assertThat(loa.text().apply(read.value())).isEqualTo("9.91 m");
  }

  @Test
  void monthsReadAsRunsAndLists() {
    assertThat(MonthList.read("4-6")).isEqualTo(MonthList.read("4, 5,6"));
    assertThat(MonthList.read("11-2").map(MonthList::text))
        .isEqualTo(MonthList.read("1,2,11,12").map(MonthList::text));
    assertThat(MonthList.read("13")).isInstanceOf(Entry.Refused.class);
    assertThat(Map.of("a", MonthList.read(""))).containsValue(new Entry.Empty<>());
  }
}
