package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.life.Audit;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.report.DateWords;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was said and what was seen, year by year. */
public final class AuditSheet extends FleetSheet {
  private Optional<List<Audit.Year>> years = Optional.empty();
  private Optional<Fleet> audited = Optional.empty();

  public AuditSheet(Desk desk) {
    super(desk);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  @Override
  public void show(Fleet fleet) {
    if (audited.map(f -> !f.almanac().equals(fleet.almanac())).orElse(true)) {
      audited = Optional.of(fleet);
      desk.reckon(
          () -> Audit.of(fleet.almanac(), fleet.asOf()),
          done -> {
            years = Optional.of(done);
            publish();
          });
    }
    super.show(fleet);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(
        new SheetState.Words(
            "For each year, the forecasts that the record as it stood on 1 January gives, held"
                + " against what was seen of the same coats in that year. About 1 coat in 10 should"
                + " go earlier than its likely span, and 1 in 10 last longer. Far more of either"
                + " says that a practice value or a label misleads."));
    blocks.add(
        new SheetState.Table(
            "Year by year",
            List.of("Year", "Looked at", "As was said", "Gone earlier", "Lasted longer"),
            years.orElse(List.of()).stream()
                .filter(y -> !y.held().isEmpty())
                .map(AuditSheet::row)
                .toList(),
            years.isPresent()
                ? "Nothing was said a year ago of which anything was seen since."
                : "Reckoning …"));
    blocks.add(
        new SheetState.Table(
            "Coats that did otherwise, newest first",
            List.of("Boat", "Surface", "Product", "Said likely bare", "Seen"),
            years.map(y -> others(fleet, y)).orElse(List.of()),
            "None."));
    blocks.add(new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", true))));
    return new SheetState(
        "What was said, what was seen",
        "The forecast held against your own looks",
        blocks,
        Optional.empty());
  }

  private static List<String> row(Audit.Year year) {
    return List.of(
        String.valueOf(year.year()),
        String.valueOf(year.held().size()),
        String.valueOf(year.count(Audit.Verdict.WITHIN)),
        String.valueOf(year.count(Audit.Verdict.EARLIER)),
        String.valueOf(year.count(Audit.Verdict.LONGER)));
  }

  private static List<List<String>> others(Fleet fleet, List<Audit.Year> years) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    DateWords words = new DateWords(fleet.asOf());
    List<List<String>> rows = new ArrayList<>();
    for (int y = years.size() - 1; y >= 0; y--) {
      for (Audit.Held held : years.get(y).held()) {
        if (held.verdict() != Audit.Verdict.WITHIN) {
          rows.add(
              List.of(
                  lookups.boat(held.said().surface().boat()).name(),
                  held.said().surface().words(),
                  held.said().product().name(),
                  words.exact(held.dates().early())
                      + " to "
                      + held.dates().late().map(words::exact).orElse("far ahead"),
                  seen(held, words)));
        }
      }
    }
    return rows;
  }

  private static String seen(Audit.Held held, DateWords words) {
    LocalDate day = held.seenOn();
    return (held.bare() ? "bare on " : "still alive on ") + words.exact(day);
  }

  @Override
  public void press(String button) {
    desk.leave();
  }

  @Override
  public Topic topic() {
    return Topic.SAID_AND_SEEN;
  }
}
