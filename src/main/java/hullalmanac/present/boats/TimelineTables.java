package hullalmanac.present.boats;

import hullalmanac.core.life.GlossPoint;
import hullalmanac.core.report.BoatTimeline;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the picture of a boat over time shows and no other table of her page says: what is ahead of
 * each surface, and the model's gloss month by month.
 */
record TimelineTables(BoatTimeline timeline) {
  /** No day of a forecast lies further ahead (years). */
  private static final int FURTHEST = 15;

  List<BoatPage.Table> all() {
    return List.of(ahead(), gloss());
  }

  /** The renew-by day of each surface and the days between which it is likely to lapse. */
  private BoatPage.Table ahead() {
    return new BoatPage.Table(
        "Forecast",
        List.of("Surface", "Renew by", "1 in 10 bare by", "9 in 10 bare by"),
        timeline.lanes().stream()
            .map(
                lane ->
                    List.of(
                        lane.name(),
                        lane.renewBy().map(LocalDate::toString).orElse(""),
                        lane.likely().map(s -> s.from().toString()).orElse(""),
                        lane.likely().map(s -> until(s.until())).orElse("")))
            .toList(),
        "No coat is in service.");
  }

  private String until(LocalDate day) {
    return day.isAfter(timeline.today().plusYears(FURTHEST))
        ? "over " + FURTHEST + " years ahead"
        : day.toString();
  }

  /** The model's line and bands as they are drawn, one day of each month. */
  private BoatPage.Table gloss() {
    List<List<String>> rows = new ArrayList<>();
    for (BoatTimeline.Lane lane : timeline.lanes()) {
      if (!lane.gloss().isEmpty()) {
        monthly(lane).forEach(p -> rows.add(row(lane, p)));
      }
    }
    return new BoatPage.Table(
        "Gloss by month",
        List.of(
            "Surface", "Day", "Gloss", "5 in 10 from", "5 in 10 to", "8 in 10 from", "8 in 10 to"),
        rows,
        "Gloss was not read on any coat in service, so none is drawn.");
  }

  /** The first point of each month on the picture. */
  private List<GlossPoint> monthly(BoatTimeline.Lane lane) {
    List<GlossPoint> monthly = new ArrayList<>();
    Optional<YearMonth> last = Optional.empty();
    for (GlossPoint p : lane.model()) {
      boolean drawn = !p.day().isBefore(timeline.from()) && !p.day().isAfter(timeline.until());
      if (drawn && !last.equals(Optional.of(YearMonth.from(p.day())))) {
        last = Optional.of(YearMonth.from(p.day()));
        monthly.add(p);
      }
    }
    return monthly;
  }

  private static List<String> row(BoatTimeline.Lane lane, GlossPoint p) {
    return List.of(
        lane.name(),
        p.day().toString(),
        units(p.middle()),
        units(p.low50()),
        units(p.high50()),
        units(p.low80()),
        units(p.high80()));
  }

  private static String units(double gloss) {
    return String.format(Locale.ROOT, "%.1f", gloss);
  }
}
