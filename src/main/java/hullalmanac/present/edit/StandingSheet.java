package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Visit;
import hullalmanac.core.takings.Earnings;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.core.takings.OpenItems;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.DateWords;
import hullalmanac.service.Fleet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How the money stands: what is outstanding, and what work brought over twelve months. */
public final class StandingSheet extends FleetSheet {
  private static final int MONTHS = 12;
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
  private static final BigDecimal METRES_PER_MILE = new BigDecimal("1609.344");
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

  public StandingSheet(Desk desk) {
    super(desk);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  /** The newest month of whose care plans visits wait for an invoice, among those that are over. */
  private static Optional<YearMonth> waiting(Almanac almanac, LocalDate today) {
    return InvoiceDraft.waiting(almanac, today.withDayOfMonth(1)).stream()
        .map(Visit::day)
        .map(YearMonth::from)
        .max(Comparator.naturalOrder());
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Almanac almanac = fleet.almanac();
    LocalDate first = fleet.asOf().withDayOfMonth(1).minusMonths(MONTHS - 1L);
    Earnings earnings = Earnings.of(almanac, first, fleet.asOf().plusDays(1));
    OpenItems open = OpenItems.of(almanac, fleet.accounts(), fleet.asOf());
    List<SheetState.Block> blocks = new ArrayList<>();
    List<SheetState.Button> buttons = new ArrayList<>();
    buttons.add(new SheetState.Button("pay", "Record a payment", false));
    buttons.add(new SheetState.Button("accountant", "List for the accountant", false));
    waiting(almanac, fleet.asOf())
        .ifPresent(
            m ->
                buttons.add(
                    new SheetState.Button(
                        "plans", "Draft the care plans of " + MONTH.format(m), true)));
    blocks.add(new SheetState.Buttons(buttons));
    blocks.add(months(earnings));
    blocks.add(parts("By service", "Service", earnings.services(), earnings.all()));
    blocks.add(parts("By harbour", "Harbour", earnings.harbours(), earnings.all()));
    blocks.add(
        new SheetState.Words(
            "Without taxes, since "
                + DateWords.dated(first)
                + "; an hour is one of those written down in visits. Driven: "
                + way(almanac.business(), earnings.metres())
                + "."));
    return new SheetState("How it stands", facts(open), blocks, Optional.empty());
  }

  private static String facts(OpenItems open) {
    String late = open.late().isPositive() ? ", " + open.late().words() + " of it late" : "";
    String held = open.held().isPositive() ? ". " + open.held().words() + " is held" : "";
    return open.owed().isPositive()
        ? open.owed().words() + " is outstanding" + late + held + "."
        : "Nothing is outstanding" + held + ".";
  }

  private static SheetState.Table months(Earnings earnings) {
    List<List<String>> rows = new ArrayList<>();
    for (Earnings.Month m : earnings.months()) {
      rows.add(
          0,
          List.of(
              MONTH.format(m.month()),
              m.invoiced().words(),
              m.received().words(),
              m.spent().words()));
    }
    return new SheetState.Table(
        "By month", List.of("Month", "Invoiced, without taxes", "Received", "Spent"), rows, "");
  }

  private static SheetState.Table parts(
      String heading, String what, List<Earnings.Part> parts, Earnings.Part all) {
    List<List<String>> rows = new ArrayList<>();
    parts.forEach(p -> rows.add(row(p.name(), p)));
    if (!parts.isEmpty()) {
      rows.add(row("all", all));
    }
    return new SheetState.Table(
        heading,
        List.of(what, "Brought", "Hours", "Per hour"),
        rows,
        "Nothing was issued in these months.");
  }

  private static List<String> row(String name, Earnings.Part p) {
    return List.of(
        name,
        p.net().words(),
        p.minutes().signum() == 0
            ? ""
            : p.minutes().divide(SIXTY, 1, RoundingMode.HALF_UP).toPlainString(),
        p.perHour().map(m -> m.words()).orElse("no minutes written down"));
  }

  private static String way(Business business, long metres) {
    boolean miles = business.units() == Business.Units.FEET;
    BigDecimal length =
        BigDecimal.valueOf(metres)
            .divide(miles ? METRES_PER_MILE : BigDecimal.valueOf(1000), 0, RoundingMode.HALF_UP);
    return length.toPlainString() + (miles ? " miles" : " km");
  }

  @Override
  public void press(String button) {
    if (button.equals("pay")) {
      desk.open(new PaymentSheet(desk, Optional.empty(), Optional.empty()));
    } else if (button.equals("accountant")) {
      desk.open(new AccountantSheet(desk));
    } else {
      fleet()
          .flatMap(f -> waiting(f.almanac(), f.asOf()))
          .ifPresent(
              m ->
                  desk.change(
                      "care plans of " + MONTH.format(m) + " drafted",
                      almanac -> InvoiceDraft.ofMonth(almanac, desk.ids(), m)));
    }
  }

  @Override
  public Topic topic() {
    return Topic.TAKINGS;
  }
}
