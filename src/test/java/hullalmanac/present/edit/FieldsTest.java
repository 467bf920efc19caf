package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Visit;
import hullalmanac.present.sheet.Said;
import hullalmanac.sample.SampleRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields as texts and back, over all rows of the sample. */
class FieldsTest {
  private static final Almanac SAMPLE = SampleRecord.make().almanac();
  private static final FieldMaker MAKE =
      new FieldMaker(SAMPLE.business(), LocalDate.of(2026, 5, 1));
  private static final BoatFields BOAT = new BoatFields(MAKE);

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
      everyTextReadsBack(List.of(visit), new VisitFields(MAKE).visit(visit));
      everyTextReadsBack(Looked.all(SAMPLE, visit), LookedFields.of(MAKE));
    }
  }

  private static Said say(String field, String typed) {
    Looked row = Looked.all(SAMPLE, SAMPLE.visits().get(0)).get(0);
    return LookedFields.of(MAKE).stream()
        .filter(f -> f.id().equals(field))
        .findFirst()
        .orElseThrow()
        .say(row, typed);
  }

  private static Observation seen(String field, String typed) {
    Looked row = Looked.all(SAMPLE, SAMPLE.visits().get(0)).get(0);
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
