package hullalmanac.core.paper;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Money;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.Earnings;
import hullalmanac.core.takings.OpenItems;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** A year's takings: by month, by service, by harbour, and what is still open. */
public final class YearPaper {
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);

  private YearPaper() {}

  /**
   * Gathers a year's takings.
   *
   * @param accounts of the record
   * @param today until when the year counts, where it is not over, and what is open
   */
  public static Paper of(Almanac almanac, Accounts accounts, int year, LocalDate today) {
    LocalDate from = LocalDate.of(year, 1, 1);
    Earnings e = Earnings.of(almanac, accounts, from, from.plusYears(1));
    Money nothing = Money.zero(almanac.business().currency());
    List<Block> blocks = new ArrayList<>();
    if (!today.isBefore(from) && today.isBefore(from.plusYears(1))) {
      blocks.add(new Block.Words("As of " + DateWords.dated(today) + "; the year is not over."));
    }
    blocks.add(new Block.Heading(2, "By month"));
    blocks.add(months(e, nothing));
    parts(blocks, "By service", "Service", e.services());
    parts(blocks, "By harbour", "Harbour", e.harbours());
    open(blocks, OpenItems.of(almanac, accounts, today), today);
    if (e.metres() > 0) {
      blocks.add(
          new Block.Words(String.format(Locale.ENGLISH, "Driven: %,.1f km.", e.metres() / 1000.0)));
    }
    blocks.add(
        new Block.Note(
            "Invoiced is without taxes, less credits, on the day of issue; received is with taxes,"
                + " less what was given back. What law and tax office ask for is theirs to say."));
    return Paper.of(almanac.business(), "Takings of " + year, "", blocks);
  }

  private static Block.Table months(Earnings e, Money nothing) {
    return new Block.Table(
        "money by month",
        List.of(
            Block.Column.words("Month"),
            Block.Column.number("Invoiced", 23),
            Block.Column.number("Received", 23),
            Block.Column.number("Spent", 23)),
        e.months().stream()
            .map(
                m ->
                    List.of(
                        MONTH.format(m.month()),
                        m.invoiced().words(),
                        m.received().words(),
                        m.spent().words()))
            .toList(),
        List.of(
            Block.SumRow.strong(
                "The year",
                sum(e, Earnings.Month::invoiced, nothing),
                sum(e, Earnings.Month::received, nothing),
                sum(e, Earnings.Month::spent, nothing))));
  }

  private static String sum(Earnings e, Function<Earnings.Month, Money> of, Money nothing) {
    return e.months().stream().map(of).reduce(nothing, Money::plus).words();
  }

  private static void parts(
      List<Block> blocks, String heading, String name, List<Earnings.Part> parts) {
    if (parts.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, heading));
    blocks.add(
        new Block.Table(
            "what was invoiced, " + heading.toLowerCase(Locale.ENGLISH),
            List.of(
                Block.Column.words(name),
                Block.Column.number("Invoiced", 25),
                Block.Column.number("An hour brought", 25)),
            parts.stream()
                .map(
                    p ->
                        List.of(
                            p.name(), p.net().words(), p.perHour().map(Money::words).orElse("")))
                .toList(),
            List.of()));
  }

  private static void open(List<Block> blocks, OpenItems open, LocalDate today) {
    if (open.accounts().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "Open on " + DateWords.dated(today)));
    List<List<String>> rows = new ArrayList<>();
    for (OpenItems.Account a : open.accounts()) {
      for (OpenItems.Item i : a.items()) {
        rows.add(List.of(a.party().name(), i.invoice().words(), i.age().words(), i.open().words()));
      }
    }
    if (rows.isEmpty()) {
      blocks.add(new Block.Words("Nobody owes anything."));
      return;
    }
    blocks.add(
        new Block.Table(
            "invoices of which something is open",
            List.of(
                Block.Column.words("Who"),
                Block.Column.words("Invoice", 25),
                Block.Column.words("How late", 22),
                Block.Column.number("Open", 20)),
            rows,
            List.of(Block.SumRow.strong("All", "", "", open.owed().words()))));
  }
}
