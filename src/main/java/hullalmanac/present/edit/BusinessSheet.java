package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewBusiness;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.PhotoService;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Facts of the business, a page of them at a time. */
public final class BusinessSheet extends FleetSheet {
  private final Page page;
  private final Rows<Business> facts;
  private final MarkBlocks mark;
  private final Previews previews;

  /** Pages of facts. */
  public enum Page {
    PAPER("Name and letterhead", "For print and mail"),
    MEASURES("Money, lengths and dates", "Currency, units, order of dates"),
    BILLING("Prices, taxes and numbers", "Hour, least price, taxes, rounding, invoices"),
    REMINDERS("Reminders", "How early, and how sure");

    private final String name;
    private final String about;

    Page(String name, String about) {
      this.name = name;
      this.about = about;
    }

    /** Its name. */
    public String words() {
      return name;
    }

    /** What can be set on it. */
    public String about() {
      return about;
    }
  }

  public BusinessSheet(Desk desk, Page page) {
    super(desk);
    this.page = page;
    previews = new Previews(desk, PhotoService::small);
    mark =
        new MarkBlocks(
            desk,
            sentence -> {
              trouble = Optional.of(sentence);
              publish();
            });
    facts =
        new Rows<>(
            new Rows.Block<>(
                "business",
                "",
                f -> List.of(f.almanac().business()),
                b -> "business",
                b -> page.words(),
                f -> fields(page, new FieldMaker(f.almanac().business(), f.asOf())),
                BusinessSheet::become),
            desk);
  }

  private static List<FieldOf<Business>> fields(Page page, FieldMaker make) {
    return switch (page) {
      case PAPER ->
          List.of(
              make.line("name", "Name of the business", Business::name),
              make.line(
                  "letterhead.taxNumber",
                  "Tax number, where invoices need one",
                  b -> b.letterhead().taxNumber()),
              make.paragraph(
                  "letterhead.address",
                  "Address, phone and mail, as printed",
                  b -> b.letterhead().address()),
              make.choice("habits.paper", "Paper", Business.Paper.class, b -> b.habits().paper()));
      case MEASURES ->
          List.of(
              currency(),
              make.choice("units", "Lengths first in", Business.Units.class, Business::units),
              make.choice("dayOrder", "12/5 is read", Business.DayOrder.class, Business::dayOrder),
              firstDay());
      case BILLING -> BillingFields.of(make);
      case REMINDERS ->
          List.of(
              make.whole(
                  "habits.leadWeeks",
                  "Weeks ahead at which a boat counts as due",
                  b -> b.habits().leadWeeks()),
              make.maybeNumber("risk", "One chance for every boat, 0.05 to 0.95", Business::risk));
    };
  }

  private static Change become(Almanac almanac, Business business) {
    return NewBusiness.of(almanac, business);
  }

  private static FieldOf<Business> currency() {
    return new FieldOf<>(
        "currency",
        "Currency, by its three letters",
        new Input.Line("USD, EUR, GBP"),
        b -> b.currency().getCurrencyCode(),
        (b, typed) -> {
          Optional<Currency> known =
              Currency.getAvailableCurrencies().stream()
                  .filter(c -> c.getCurrencyCode().equalsIgnoreCase(typed.strip()))
                  .filter(c -> c.getDefaultFractionDigits() >= 0)
                  .findFirst();
          return known
              .<Entry<Business>>map(
                  c ->
                      new Entry.Read<>(
                          With.component(b, "currency", c), c.getDisplayName(Locale.ENGLISH)))
              .orElseGet(
                  () ->
                      new Entry.Refused<>(
                          "Write the three letters of a currency, such as USD or EUR."));
        });
  }

  private static FieldOf<Business> firstDay() {
    List<String> days = Arrays.stream(DayOfWeek.values()).map(BusinessSheet::name).toList();
    return new FieldOf<>(
        "habits.firstDay",
        "A week begins on",
        new Input.Choice(days),
        b -> name(b.habits().firstDay()),
        (b, typed) ->
            FieldMaker.oneOf(days, typed)
                .map(
                    day ->
                        With.component(b, "habits.firstDay", DayOfWeek.of(days.indexOf(day) + 1))));
  }

  private static String name(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<SheetState.Block> blocks = new ArrayList<>(List.of(facts.form(fleet)));
    if (page == Page.PAPER) {
      blocks.addAll(mark.of(fleet.almanac().business()));
    }
    return new SheetState(page.words(), page.about(), blocks, Optional.empty());
  }

  @Override
  public void add(String block, List<String> files) {
    trouble = Optional.empty();
    files.stream().limit(1).forEach(mark::choose);
  }

  @Override
  public void remove(String block, String row) {
    mark.takeOff();
  }

  @Override
  public void picture(String file, int side, Consumer<Picture> answer) {
    previews.ask(file, side, answer);
  }

  @Override
  public Topic topic() {
    return Topic.SETTINGS;
  }
}
