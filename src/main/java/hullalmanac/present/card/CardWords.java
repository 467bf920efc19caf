package hullalmanac.present.card;

import hullalmanac.core.card.DwellTimer;
import hullalmanac.core.card.JobCard;
import hullalmanac.core.card.JobCard.CardStep;
import hullalmanac.core.card.StepWords;
import hullalmanac.core.card.Stop;
import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.Caution;
import hullalmanac.core.report.DateWords;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The card of a visit in words. */
final class CardWords {
  private static final int SECONDS = 60;

  private CardWords() {}

  static CardState state(JobCard card, Kept kept, int shown, Entry<LocalDateTime> expected) {
    List<CardState.Row> rows = new ArrayList<>();
    for (int i = 0; i < card.steps().size(); i++) {
      CardStep s = card.steps().get(i);
      rows.add(
          new CardState.Row(
              (i + 1) + "  " + s.step().kind().words(),
              where(s),
              kept.done.contains(s.step().id()),
              i == shown));
    }
    return new CardState(
        card.boat().name(),
        DateWords.full(card.visit().day()) + (card.place().isBlank() ? "" : " · " + card.place()),
        kept.back,
        back(expected),
        card.runoff().map(r -> "Runoff: " + r).orElse("Runoff: " + StepWords.NO_RUNOFF),
        rows,
        card.steps().isEmpty() ? Optional.empty() : Optional.of(now(card, kept, shown)),
        card.checks().stream().map(c -> new CardState.Check(c, kept.ticked.contains(c))).toList(),
        card.tools(),
        Stop.STANDING);
  }

  private static String back(Entry<LocalDateTime> expected) {
    if (expected instanceof Entry.Read<LocalDateTime> read) {
      return String.format(Locale.ROOT, "Expected back by %tR. Tell someone.", read.value());
    }
    return expected instanceof Entry.Refused<LocalDateTime> refused
        ? refused.sentence() + (refused.sentence().endsWith(".") ? "" : ".")
        : "Write when you are expected back, and tell someone.";
  }

  private static String where(CardStep s) {
    return s.where().isEmpty() ? "whole boat" : String.join("; ", s.where());
  }

  private static CardState.Now now(JobCard card, Kept kept, int shown) {
    CardStep s = card.steps().get(shown);
    Id<Step> id = s.step().id();
    List<CardState.StopLine> stops =
        s.stops().stream()
            .map(
                stop ->
                    new CardState.StopLine(
                        stop.sentence(), stop.rule().source(), kept.isRead(id, stop)))
            .toList();
    return new CardState.Now(
        (shown + 1)
            + " of "
            + card.steps().size()
            + ": "
            + s.step().kind().words()
            + (kept.done.contains(id) ? ", done" : ""),
        facts(s),
        StepWords.mix(s, kept.bottleMl),
        s.dilution().isEmpty() ? List.of() : bottles(kept),
        stops,
        s.cautions().stream().map(Caution::text).toList(),
        s.dwell().map(StepWords::dwell).orElse(""),
        kept.timers.containsKey(id),
        stops.stream().allMatch(CardState.StopLine::read),
        kept.done.contains(id));
  }

  private static List<CardState.Fact> facts(CardStep s) {
    Step step = s.step();
    return Stream.of(
            new CardState.Fact("Where", where(s)),
            new CardState.Fact("Product", StepWords.product(s)),
            new CardState.Fact("Pad", step.pad()),
            new CardState.Fact("Speed", step.speed()),
            new CardState.Fact("Passes", step.passes().map(String::valueOf).orElse("")),
            new CardState.Fact("Note", step.note()))
        .filter(f -> !f.text().isBlank())
        .toList();
  }

  private static List<CardState.Bottle> bottles(Kept kept) {
    return StepWords.BOTTLES.stream()
        .map(ml -> new CardState.Bottle(ml, StepWords.size(ml), ml == kept.bottleMl))
        .toList();
  }

  /** What a phase asks of one. */
  static String toDo(DwellTimer.Phase phase) {
    return switch (phase) {
      case WORKING -> "working, leave it on";
      case RINSE -> "rinse it off now";
      case OVER -> "over its time: rinse at once";
    };
  }

  static CardClock clock(JobCard card, Kept kept, int shown, Instant now) {
    List<String> rows =
        card.steps().stream()
            .map(s -> kept.timers.get(s.step().id()))
            .map(t -> t == null ? "" : left(t, now))
            .toList();
    DwellTimer timer =
        card.steps().isEmpty() ? null : kept.timers.get(card.steps().get(shown).step().id());
    if (timer == null) {
      return new CardClock("", "", false, rows);
    }
    DwellTimer.Phase phase = timer.phase(now);
    return new CardClock(
        left(timer, now), Texts.capital(toDo(phase)), phase != DwellTimer.Phase.WORKING, rows);
  }

  /** Minutes and seconds to the next phase, rounded up; after a plus, how long it is over. */
  private static String left(DwellTimer timer, Instant now) {
    boolean over = timer.phase(now) == DwellTimer.Phase.OVER;
    Duration left = timer.left(now);
    long seconds = over ? left.toSeconds() : left.plusMillis(999).toSeconds();
    return (over ? "+" : "")
        + String.format(Locale.ROOT, "%d:%02d", seconds / SECONDS, seconds % SECONDS);
  }
}
