package hullalmanac.study;

import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Forecaster;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.study.generator.SecondLaw;
import hullalmanac.study.generator.SecondLaw.Fleet;
import hullalmanac.study.generator.SecondLaw.Plan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Lives fleets through whose visits follow the forecast, and scores it on each. */
final class Fleets {
  private static final int DAYS_AHEAD = 30;

  private Fleets() {}

  /** A fleet of a plan whose coats are renewed when the forecast says so. */
  static Fleet of(Plan plan) {
    return new SecondLaw(plan).run((known, day) -> due(new Forecaster(known, day), day));
  }

  private static Set<Id<Coat>> due(Forecaster forecaster, LocalDate day) {
    Set<Id<Coat>> due = new HashSet<>();
    for (CoatForecast f : forecaster.inService()) {
      boolean bare = f.outcome() instanceof Outcome.AlreadyLapsed;
      boolean soon =
          f.outcome() instanceof Outcome.Dated d && d.renewBy().isBefore(day.plusDays(DAYS_AHEAD));
      if (bare || soon) {
        due.add(f.coat().id());
      }
    }
    return due;
  }

  /** Scores every coat in service on the fleet's day. */
  static List<Score> scores(Fleet fleet, WearPractice practice) {
    Almanac almanac = fleet.almanac();
    List<Score> scores = new ArrayList<>();
    LocalDate horizon = fleet.asOf().plusYears(15);
    for (CoatForecast f : new Forecaster(almanac, practice, fleet.asOf()).inService()) {
      scores.add(Score.of(f, fleet.lapsed().get(f.coat().id()), horizon));
    }
    return scores;
  }
}
