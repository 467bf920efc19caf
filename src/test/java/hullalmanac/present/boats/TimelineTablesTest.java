package hullalmanac.present.boats;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.GlossPoint;
import hullalmanac.core.record.Boat;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.shell.ShellPresenter;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** All that the picture of a boat over time shows stands in the tables of her page. */
class TimelineTablesTest {
  private final AtomicReference<BoatsState> state = new AtomicReference<>();
  private final BoatsPresenter presenter =
      new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner()).boats();

  @BeforeEach
  void open() {
    presenter.onChange(state::set);
    presenter.show(OpenSample.fleet());
  }

  private BoatPage page(Boat boat) {
    presenter.choose(boat.id());
    return state.get().page().orElseThrow();
  }

  private static BoatPage.Table table(BoatPage page, String title) {
    return page.tables().stream().filter(t -> t.title().equals(title)).findFirst().orElseThrow();
  }

  /** The texts of a table's rows in some of its columns. */
  private static Set<List<String>> texts(BoatPage page, String title, String... columns) {
    BoatPage.Table table = table(page, title);
    return table.rows().stream()
        .map(
            row -> List.of(columns).stream().map(c -> row.get(table.columns().indexOf(c))).toList())
        .collect(Collectors.toCollection(HashSet::new));
  }

  @Test
  void everyRenewByDayAndItsWindowStandInTheForecast() {
    int dated = 0;
    for (Boat boat : OpenSample.fleet().almanac().boats()) {
      BoatPage page = page(boat);
      Set<List<String>> rows =
          texts(page, "Forecast", "Surface", "Renew by", "1 in 10 bare by", "9 in 10 bare by");
      assertThat(table(page, "Forecast").rows()).hasSameSizeAs(page.timeline().lanes());
      for (BoatTimeline.Lane lane : page.timeline().lanes()) {
        String until = lane.likely().map(s -> s.until().toString()).orElse("");
        assertThat(rows)
            .contains(
                List.of(
                    lane.name(),
                    lane.renewBy().map(LocalDate::toString).orElse(""),
                    lane.likely().map(s -> s.from().toString()).orElse(""),
                    until.startsWith("2200") ? "over 15 years ahead" : until));
        dated += lane.likely().isPresent() ? 1 : 0;
      }
    }
    assertThat(dated).as("the sample has what is asked about").isGreaterThan(50);
  }

  @Test
  void everyMonthOfTheLineAndItsBandsStandsInGlossByMonth() {
    int points = 0;
    for (Boat boat : OpenSample.fleet().almanac().boats()) {
      BoatPage page = page(boat);
      List<List<String>> rows = table(page, "Gloss by month").rows();
      List<List<String>> wanted = new ArrayList<>();
      for (BoatTimeline.Lane lane : page.timeline().lanes()) {
        Set<YearMonth> months = new HashSet<>();
        for (GlossPoint p : lane.gloss().isEmpty() ? List.<GlossPoint>of() : lane.model()) {
          if (!p.day().isBefore(page.timeline().from()) && months.add(YearMonth.from(p.day()))) {
            wanted.add(
                List.of(
                    lane.name(),
                    p.day().toString(),
                    gloss(p.middle()),
                    gloss(p.low50()),
                    gloss(p.high50()),
                    gloss(p.low80()),
                    gloss(p.high80())));
          }
        }
        if (!months.isEmpty()) {
          assertThat(months).as("into the future").contains(YearMonth.of(2027, 4));
        }
      }
      assertThat(rows).isEqualTo(wanted);
      points += rows.size();
    }
    assertThat(points).as("the sample has what is asked about").isGreaterThan(200);
  }

  private static String gloss(double units) {
    return String.format(Locale.ROOT, "%.1f", units);
  }

  @Test
  void everyMarkOfTheRecordStandsInItsTable() {
    int marks = 0;
    for (Boat boat : OpenSample.fleet().almanac().boats()) {
      BoatPage page = page(boat);
      Set<List<String>> coats = texts(page, "Coats", "Laid on", "Product");
      Set<List<String>> looks = texts(page, "Findings", "Day", "Surface", "What", "Seen");
      Set<List<String>> ashore = texts(page, "Berths", "Water");
      for (BoatTimeline.Lane lane : page.timeline().lanes()) {
        for (BoatTimeline.CoatMark c : lane.coats()) {
          assertThat(coats).contains(List.of(c.day().toString(), c.product()));
        }
        for (BoatTimeline.WaterMark w : lane.water()) {
          assertThat(looks)
              .anyMatch(
                  r ->
                      r.get(0).equals(w.day().toString())
                          && r.get(1).equals(lane.name())
                          && r.get(3).equals(w.behaviour().code()));
        }
        for (BoatTimeline.GlossDot g : lane.gloss()) {
          assertThat(looks)
              .anyMatch(
                  r ->
                      r.get(0).equals(g.day().toString())
                          && r.get(1).equals(lane.name())
                          && r.get(3).startsWith(gloss(g.gloss())));
        }
        marks += lane.coats().size() + lane.water().size() + lane.gloss().size();
      }
      if (!page.timeline().layUps().isEmpty()) {
        assertThat(ashore).contains(List.of("ashore"));
      }
    }
    assertThat(marks).as("the sample has what is asked about").isGreaterThan(500);
  }

  @Test
  void aBoatWithoutCoatsSaysSoInPlaceOfTables() {
    BoatTimeline bare =
        new BoatTimeline(
            LocalDate.of(2024, 5, 1),
            LocalDate.of(2027, 5, 1),
            LocalDate.of(2026, 5, 1),
            List.of(),
            List.of());
    for (BoatPage.Table table : new TimelineTables(bare).all()) {
      assertThat(table.rows()).isEmpty();
      assertThat(table.empty()).endsWith(".");
    }
  }

  @Test
  void aWindowWithoutAnEndIsSaidInWords() {
    LocalDate today = LocalDate.of(2026, 5, 1);
    BoatTimeline.Lane lane =
        new BoatTimeline.Lane(
            "transom",
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.of(new BoatTimeline.Span(today, LocalDate.of(2200, 1, 1))));
    BoatTimeline timeline =
        new BoatTimeline(today.minusYears(2), today.plusYears(1), today, List.of(), List.of(lane));
    assertThat(new TimelineTables(timeline).all().get(0).rows())
        .containsExactly(List.of("transom", "", "2026-05-01", "over 15 years ahead"));
  }
}
