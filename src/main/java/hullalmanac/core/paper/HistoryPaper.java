package hullalmanac.core.paper;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.BoatHistory;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A boat's history for her owner: what comes next and why, the boat over time, photos before and
 * after, every visit. No price, note or name of a person.
 */
public final class HistoryPaper {
  /** The most lanes that one chart has. */
  private static final int LANES = 5;

  private final Almanac almanac;
  private final LocalDate today;
  private final List<Block> blocks = new ArrayList<>();

  private HistoryPaper(Almanac almanac, LocalDate today) {
    this.almanac = almanac;
    this.today = today;
  }

  /**
   * Gathers a boat's history.
   *
   * @param coats forecasts of the record, in order of their early ends
   * @param today the day from which it is seen
   */
  public static Paper of(
      Almanac almanac, List<CoatForecast> coats, LocalDate today, Id<Boat> boat) {
    return new HistoryPaper(almanac, today).paper(coats, boat);
  }

  private Paper paper(List<CoatForecast> coats, Id<Boat> id) {
    Lookups lookups = new Lookups(almanac, today);
    Boat boat = lookups.boat(id);
    BoatHistory history = new BoatHistory(almanac, lookups, id);
    blocks.add(
        new Block.Words(BoatHistory.facts(boat, lookups) + "\nAs of " + DateWords.dated(today)));
    blocks.add(new Block.Heading(2, "What comes next"));
    next(CoatForecast.leading(coats, id));
    overTime(BoatTimeline.of(almanac, boat, coats, today));
    visits(history);
    pairs(history.pairs());
    return Paper.of(almanac.business(), boat.name(), "What was done, and what comes next", blocks);
  }

  private void next(Optional<CoatForecast> leading) {
    if (leading.isEmpty()) {
      blocks.add(
          new Block.Words(
              "No coat is in service. What is laid on this boat next will be followed from here."));
      return;
    }
    CoatForecast f = leading.get();
    ForecastWords words = new ForecastWords(today);
    blocks.add(new Block.Lead(Texts.capital(f.surface().words()) + ": " + words.due(f)));
    blocks.add(new Block.Words(words.sentence(f)));
    if (!f.reasons().isEmpty()) {
      blocks.add(
          new Block.Table(
              "how this date came about",
              List.of(
                  Block.Column.words("Step", 20),
                  Block.Column.words("What it rests on"),
                  Block.Column.words("Best by", 22)),
              f.reasons().stream()
                  .map(
                      r ->
                          List.of(
                              r.stage().words(),
                              String.join("\n", r.facts()),
                              r.renewBy().map(DateWords::dated).orElse("over 15 years ahead")))
                  .toList(),
              List.of()));
    }
    blocks.add(new Block.Note(Paper.FORECAST));
  }

  private void overTime(BoatTimeline timeline) {
    List<BoatTimeline.Lane> lanes = timeline.lanes();
    if (lanes.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "This boat over time"));
    int charts = (lanes.size() + LANES - 1) / LANES;
    int each = (lanes.size() + charts - 1) / charts;
    for (int i = 0; i < lanes.size(); i += each) {
      BoatTimeline part =
          new BoatTimeline(
              timeline.from(),
              timeline.until(),
              timeline.today(),
              timeline.layUps(),
              lanes.subList(i, Math.min(lanes.size(), i + each)));
      blocks.add(new Block.Drawing(new Block.OverTime(part), TimelineWords.of(part)));
    }
    blocks.add(
        new Block.Note(
            "Upright lines: coats laid. Dots: gloss read. Bands: where gloss is expected, 5 and 8"
                + " times in 10. Filled drops: water beads; hollow drops: it lies flat. Hatched:"
                + " when a coat is likely to go bare. Dashed: best renewed by. "
                + Paper.FORECAST));
  }

  private void visits(BoatHistory history) {
    List<BoatHistory.Visited> visits = history.visits();
    blocks.add(new Block.Heading(2, "What was done"));
    if (visits.isEmpty()) {
      blocks.add(new Block.Words("No visit is written down yet."));
      return;
    }
    blocks.add(
        new Block.Table(
            "visits, the newest first",
            List.of(
                Block.Column.words("When", 22),
                Block.Column.words("What was done"),
                Block.Column.words("What was seen", 33)),
            visits.stream()
                .map(
                    v -> List.of(v.day(), String.join("\n", v.done()), String.join("\n", v.seen())))
                .toList(),
            List.of()));
  }

  private void pairs(List<BoatHistory.Pair> pairs) {
    if (pairs.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "Before and after"));
    pairs.forEach(p -> blocks.add(PhotoPairs.of(p)));
  }
}
