package hullalmanac.core.paper;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is due, harbour by harbour, to take along: boats only, no names of people. */
public final class DuePaper {
  private static final String NOWHERE = "\uFFFF";

  private DuePaper() {}

  /**
   * Gathers what falls due within the weeks that the business looks ahead.
   *
   * @param due boats in order of the early ends
   * @param today the day from which it is seen
   */
  public static Paper of(Almanac almanac, List<BoatDue> due, LocalDate today) {
    int weeks = almanac.business().habits().leadWeeks();
    LocalDate last = today.plusWeeks(weeks);
    Lookups lookups = new Lookups(almanac, today);
    Map<String, List<BoatDue>> harbours = new TreeMap<>();
    for (BoatDue d : due) {
      boolean soon =
          d.workBy().or(d::early).map(day -> !day.isAfter(last)).orElse(true)
              || d.early().map(day -> !day.isAfter(last)).orElse(false);
      if (soon && d.coats().stream().anyMatch(f -> f.early().isPresent())) {
        String harbour = lookups.harbour(d.boat().id());
        harbours
            .computeIfAbsent(harbour.isEmpty() ? NOWHERE : harbour, h -> new ArrayList<>())
            .add(d);
      }
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Words(
            "As of " + DateWords.dated(today) + ", up to " + DateWords.dated(last) + "."));
    if (harbours.isEmpty()) {
      blocks.add(new Block.Words("Nothing is due within " + weeks + " weeks."));
    }
    harbours.forEach(
        (harbour, boats) -> {
          blocks.add(new Block.Heading(2, harbour.equals(NOWHERE) ? "Harbour not known" : harbour));
          blocks.add(table(lookups, harbour, boats, today));
        });
    blocks.add(
        new Block.Note(Paper.FORECAST + " Labels and data sheets of the products come first."));
    return Paper.of(almanac.business(), "What is due, by harbour", "", blocks);
  }

  private static Block.Table table(
      Lookups lookups, String harbour, List<BoatDue> boats, LocalDate today) {
    ForecastWords words = new ForecastWords(today);
    return new Block.Table(
        "boats that are due" + (harbour.equals(NOWHERE) ? "" : " at " + harbour),
        List.of(
            Block.Column.words("Boat", 17),
            Block.Column.words("Berth", 9),
            Block.Column.words("What is due", 26),
            Block.Column.words("When", 22),
            Block.Column.words("How likely")),
        boats.stream()
            .map(
                d -> {
                  CoatForecast first = d.coats().get(0);
                  return List.of(
                      d.boat().name(),
                      lookups.home(d.boat().id()).map(Berth::access).map(a -> a.place()).orElse(""),
                      ForecastWords.surfaces(d.coats().stream().map(f -> f.surface()).toList()),
                      words.due(first),
                      words.chance(first));
                })
            .toList(),
        List.of());
  }
}
