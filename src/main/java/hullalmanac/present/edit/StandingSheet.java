package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Visit;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.Earnings;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.core.takings.OpenItems;
import hullalmanac.core.takings.Payer;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.Papers;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** How the money stands: what is outstanding, and what work brought over twelve months. */
public final class StandingSheet extends FleetSheet {
  private static final int MONTHS = 12;
  private static final int MOST_NAMED = 8;
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
  private static final BigDecimal METRES_PER_MILE = new BigDecimal("1609.344");
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

  private Optional<Reckoned> reckoned = Optional.empty();
  private long newest;

  public StandingSheet(Desk desk) {
    super(desk);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  /**
   * What is reckoned of a record.
   *
   * @param month the newest that is over and of whose care plans visits wait for an invoice
   * @param unpaid visits that wait though nobody is written down who pays, in words
   */
  private record Reckoned(
      LocalDate first, Earnings earnings, Optional<YearMonth> month, List<String> unpaid) {
    static Reckoned of(Fleet fleet) {
      LocalDate today = fleet.asOf();
      LocalDate first = today.withDayOfMonth(1).minusMonths(MONTHS - 1L);
      Map<Boolean, List<Visit>> waiting =
          InvoiceDraft.waiting(fleet.almanac(), fleet.accounts(), today.withDayOfMonth(1)).stream()
              .collect(Collectors.partitioningBy(payable(fleet)));
      Map<Id<Boat>, String> boats =
          fleet.almanac().boats().stream().collect(Collectors.toMap(Boat::id, Boat::name));
      return new Reckoned(
          first,
          Earnings.of(fleet.almanac(), fleet.accounts(), first, today.plusDays(1)),
          waiting.get(true).stream()
              .map(Visit::day)
              .map(YearMonth::from)
              .max(Comparator.naturalOrder()),
          waiting.get(false).stream()
              .map(v -> boats.get(v.boat()) + ", " + DateWords.dated(v.day()))
              .toList());
    }

    private static Predicate<Visit> payable(Fleet fleet) {
      BiPredicate<Id<Boat>, LocalDate> known = Payer.isKnown(fleet.almanac());
      return v -> known.test(v.boat(), v.day());
    }
  }

  /** It is reckoned over all rows, so not on the way; until then it stands as it was. */
  @Override
  public void show(Fleet now) {
    super.show(now);
    long mine = ++newest;
    desk.reckon(
        () -> Reckoned.of(now),
        answer -> {
          if (mine == newest) {
            reckoned = Optional.of(answer);
            publish();
          }
        });
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    OpenItems open = fleet.open();
    List<SheetState.Block> blocks = new ArrayList<>();
    List<SheetState.Button> buttons = new ArrayList<>();
    buttons.add(new SheetState.Button("pay", "Record a payment", false));
    buttons.add(new SheetState.Button("accountant", "List for the accountant", false));
    int year = fleet.asOf().getYear();
    buttons.add(new SheetState.Button("this year", year + " on paper", false));
    buttons.add(new SheetState.Button("last year", year - 1 + " on paper", false));
    reckoned
        .flatMap(Reckoned::month)
        .ifPresent(
            m ->
                buttons.add(
                    new SheetState.Button(
                        "plans", "Draft the care plans of " + MONTH.format(m), true)));
    blocks.add(new SheetState.Buttons(buttons));
    if (reckoned.isEmpty()) {
      blocks.add(new SheetState.Words("Reckoning what work brought …"));
    }
    reckoned.ifPresent(r -> show(fleet.almanac().business(), r, blocks));
    return new SheetState("How it stands", facts(open), blocks, Optional.empty());
  }

  private static void show(Business business, Reckoned r, List<SheetState.Block> blocks) {
    if (!r.unpaid().isEmpty()) {
      blocks.add(new SheetState.Words(unpaid(r.unpaid())));
    }
    Earnings earnings = r.earnings();
    blocks.add(months(earnings));
    blocks.add(parts("By service", "Service", earnings.services(), earnings.all()));
    blocks.add(parts("By harbour", "Harbour", earnings.harbours(), earnings.all()));
    blocks.add(
        new SheetState.Words(
            "What work brought is without taxes, since "
                + DateWords.dated(r.first())
                + "; an hour is one of those written down in visits. Driven: "
                + way(business, earnings.metres())
                + "."));
  }

  private static String unpaid(List<String> visits) {
    String more =
        visits.size() > MOST_NAMED ? " and " + (visits.size() - MOST_NAMED) + " more" : "";
    return "Of visits of care plans nobody is written down who pays: "
        + String.join("; ", visits.stream().limit(MOST_NAMED).toList())
        + more
        + ". Write down an owner, or who pays, then an invoice can be drafted.";
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
        "By month",
        List.of("Month", "Invoiced, without taxes", "Received, with taxes", "Spent, with taxes"),
        rows,
        "");
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
    } else if (button.equals("this year")) {
      onPaper();
    } else if (button.equals("last year")) {
      openPaper(1);
    } else {
      reckoned
          .flatMap(Reckoned::month)
          .ifPresent(
              m ->
                  desk.change(
                      "care plans of " + MONTH.format(m) + " drafted",
                      almanac -> InvoiceDraft.ofMonth(almanac, desk.ids(), m)));
    }
  }

  @Override
  public void onPaper() {
    openPaper(0);
  }

  private void openPaper(int yearsBack) {
    fleet()
        .map(f -> f.asOf().getYear() - yearsBack)
        .ifPresent(year -> desk.open(PaperSheet.of(desk, Papers.Asked.ofYear(year))));
  }

  @Override
  public Topic topic() {
    return Topic.TAKINGS;
  }
}
