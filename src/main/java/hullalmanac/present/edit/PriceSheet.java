package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.price.LengthPrice;
import hullalmanac.core.price.PhonePrice;
import hullalmanac.core.price.PriceGap;
import hullalmanac.core.price.StarterRates;
import hullalmanac.core.price.TimePrice;
import hullalmanac.core.price.UsualMinutes;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Rate;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a job costs: at once on the phone, then by length and by time and materials. */
public final class PriceSheet extends ShownSheet {
  private static final String ASKED = "asked";
  private static final String EFFORT = "effort";
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  private final boolean inPlace;
  private final Draft<PriceAsked> asked;
  private final Draft<PriceEffort> effort = new Draft<>(EFFORT, PriceEffort.UNSAID);
  private final NewEstimate estimates;
  private Optional<Known> known = Optional.empty();

  /**
   * @param boat whose work is priced, where it is one of the record
   * @param inPlace whether it stands in its place in the window, so that there is nothing to leave
   */
  public PriceSheet(Desk desk, Optional<Id<Boat>> boat, boolean inPlace) {
    super(desk);
    estimates = new NewEstimate(desk);
    this.inPlace = inPlace;
    asked =
        new Draft<>(
            ASKED, new PriceAsked(boat, "", Optional.empty(), Optional.empty(), Optional.empty()));
  }

  /**
   * What is read of a record once, for it is asked for with each key.
   *
   * @param rates the record's own, or those to begin with while it has none
   * @param usual how long it took so far, by rate, as far as it was asked for
   */
  private record Known(
      List<Rate> rates,
      List<FieldMaker.Named<Boat>> boats,
      Map<Rate, Optional<UsualMinutes>> usual) {}

  @Override
  public void show(Fleet now) {
    known = Optional.empty();
    super.show(now);
  }

  private Known known(Almanac almanac) {
    if (known.isEmpty()) {
      List<Rate> own = almanac.books().rates();
      known =
          Optional.of(
              new Known(
                  own.isEmpty() ? StarterRates.of(almanac.business().currency(), desk.ids()) : own,
                  almanac.boats().stream()
                      .sorted(Comparator.comparing(Boat::name, String.CASE_INSENSITIVE_ORDER))
                      .map(b -> new FieldMaker.Named<>(b.id(), b.name()))
                      .toList(),
                  new HashMap<>()));
    }
    return known.get();
  }

  private PriceAsked.Read read(Almanac almanac) {
    Known now = known(almanac);
    return new PriceAsked.Read(
        asked.value(),
        almanac,
        now.rates(),
        rate -> now.usual().computeIfAbsent(rate, r -> UsualMinutes.of(almanac, r)));
  }

  private List<FieldOf<PriceAsked>> askedFields(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    PriceAsked.Read read = read(fleet.almanac());
    List<String> services = PriceAsked.services(read.rates());
    List<FieldMaker.Named<Boat>> boats = known(fleet.almanac()).boats();
    FieldOf<PriceAsked> length = make.length("length", "Length", PriceAsked::length);
    String hint =
        read.boat()
            .flatMap(Boat::loa)
            .map(l -> length(fleet.almanac().business(), l))
            .orElse("32' 6\" or 9.9 m");
    return List.of(
        new FieldOf<>(
            "service",
            "Service",
            new Input.Choice(services),
            a -> read.service(),
            (a, typed) ->
                FieldMaker.oneOf(services, typed)
                    .map(s -> new PriceAsked(a.boat(), s, a.length(), a.type(), a.condition()))),
        make.maybeOf("boat", "Boat, where she is in the record", boats, PriceAsked::boat),
        new FieldOf<>("length", "Length", new Input.Line(hint), length.text(), length.enter()),
        make.maybeChoice("type", "Type", BoatType.class, PriceAsked::type),
        make.maybeChoice("condition", "Condition", Condition.class, PriceAsked::condition));
  }

  private static String length(Business business, Length length) {
    return business.units() == Business.Units.FEET ? length.feetAndInches() : length.metresText();
  }

  private List<FieldOf<PriceEffort>> effortFields(Fleet fleet) {
    return PriceEffort.fields(
        new FieldMaker(fleet.almanac().business(), fleet.asOf()), read(fleet.almanac()));
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    PriceAsked.Read read = read(fleet.almanac());
    Optional<LengthPrice> length = read.byLength();
    Optional<TimePrice> time = effort.value().byTime(read);
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(asked.form("", askedFields(fleet)));
    blocks.add(effort.form("By time and materials", effortFields(fleet)));
    blocks.add(new SheetState.Words(basis(fleet, read)));
    blocks.add(both(length, time));
    if (length.isPresent() && time.isPresent()) {
      blocks.add(new SheetState.Words(gap(PriceGap.of(length.get(), time.get()))));
    }
    time.ifPresent(t -> blocks.add(parts(t)));
    List<SheetState.Button> buttons = new ArrayList<>();
    if (read.boat().isPresent()) {
      buttons.add(new SheetState.Button("estimate", "Begin an estimate for her", true));
    }
    if (!inPlace) {
      buttons.add(new SheetState.Button("done", "Done", false));
    }
    blocks.add(new SheetState.Buttons(buttons));
    return new SheetState("What it costs", phone(fleet, read), blocks, Optional.empty());
  }

  /** What can be said at once. */
  private static String phone(Fleet fleet, PriceAsked.Read read) {
    if (read.rates().isEmpty()) {
      return "There is no rate yet; write yours under Settings, Rates by length.";
    }
    Optional<Length> length = read.length();
    if (length.isEmpty()) {
      return "Write a length, and the range to say on the phone stands here.";
    }
    return PhonePrice.of(read.rates(), read.service(), length.get(), read.type())
        .map(
            p ->
                "On the phone: "
                    + p.words()
                    + " for "
                    + length(fleet.almanac().business(), length.get())
                    + ", without taxes.")
        .orElse("No rate fits such a boat; rates stand under Settings, Rates by length.");
  }

  /** Where the numbers come from that nobody typed. */
  private String basis(Fleet fleet, PriceAsked.Read read) {
    List<String> from = new ArrayList<>();
    if (fleet.almanac().books().rates().isEmpty() && !read.rates().isEmpty()) {
      from.add("The rate is a starter value: common practice, no source.");
    }
    if (read.asked().condition().isEmpty()) {
      read.byLength()
          .flatMap(l -> l.rate().condition())
          .ifPresent(
              c ->
                  from.add(
                      "Nobody has said her condition; the rate for " + c.words() + " stands in."));
    }
    if (effort.value().area().isEmpty()) {
      read.area()
          .ifPresent(
              a ->
                  from.add(
                      "Area "
                          + a.toPlainString()
                          + " m² by rule of thumb from her length, beam and freeboard."));
    }
    if (effort.value().minutes().isEmpty()) {
      from.add(
          read.usual()
              .map(
                  u ->
                      u.perSquareMetre().toPlainString()
                          + " minutes for a m² from your last "
                          + (u.visits() == 1 ? "visit" : u.visits() + " visits")
                          + " with these steps.")
              .orElse("No visit with these steps has its minutes written down yet."));
    }
    effort.value().missing(read).ifPresent(m -> from.add("For a price by time, write " + m + "."));
    return String.join(" ", from);
  }

  private static SheetState.Table both(Optional<LengthPrice> length, Optional<TimePrice> time) {
    List<List<String>> rows = new ArrayList<>();
    length.ifPresent(
        l -> {
          rows.add(row("By length, lowest", l.low(), time));
          rows.add(row("By length, halfway", l.middle(), time));
          rows.add(row("By length, highest", l.high(), time));
        });
    time.ifPresent(t -> rows.add(row("By time and materials", t.total(), time)));
    return new SheetState.Table(
        "Both prices",
        List.of("Reckoned", "Price, without taxes", "Then an hour earns"),
        rows,
        "Neither can be reckoned yet.");
  }

  private static List<String> row(String what, Money price, Optional<TimePrice> time) {
    return List.of(
        what, price.words(), time.flatMap(t -> t.hourEarned(price)).map(Money::words).orElse(""));
  }

  private static String gap(PriceGap gap) {
    String percent = gap.percent().map(p -> " (" + p.abs().toPlainString() + " %)").orElse("");
    int sign = gap.byTime().compareTo(gap.byLength());
    Money apart =
        sign < 0 ? gap.byLength().minus(gap.byTime()) : gap.byTime().minus(gap.byLength());
    String first =
        sign == 0
            ? "Both come to the same."
            : "By time it is "
                + apart.words()
                + percent
                + (sign < 0 ? " less" : " more")
                + " than by length.";
    return gap.reasons().isEmpty()
        ? first
        : first + " Over 20 % apart, because: " + String.join(" ", gap.reasons());
  }

  private static SheetState.Table parts(TimePrice t) {
    List<List<String>> rows = new ArrayList<>();
    BigDecimal hours = t.workMinutes().divide(SIXTY, 1, RoundingMode.HALF_UP);
    rows.add(List.of("Work, " + hours.toPlainString() + " hours", t.work().words()));
    rows.add(List.of("Products", t.products().words()));
    rows.add(List.of("Pads and cloths", t.job().pads().words()));
    rows.add(List.of("The way and its time", t.travel().words()));
    rows.add(List.of("Waiting", t.waiting().words()));
    rows.add(List.of("Together", t.sum().words()));
    if (t.total().compareTo(t.sum()) > 0) {
      rows.add(List.of("Least price of a visit", t.total().words()));
    }
    return new SheetState.Table("What time and materials are", List.of("Part", "Price"), rows, "");
  }

  @Override
  public Said say(At at, String text) {
    return fleet()
        .map(
            f ->
                at.block().equals(ASKED)
                    ? asked.say(askedFields(f), at, text)
                    : effort.say(effortFields(f), at, text))
        .orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    fleet()
        .ifPresent(
            f -> {
              if (at.block().equals(ASKED)) {
                asked.enter(askedFields(f), at, text);
              } else {
                effort.enter(effortFields(f), at, text);
              }
            });
    publish();
  }

  @Override
  public void press(String button) {
    if (button.equals("estimate")) {
      asked.value().boat().ifPresent(this::estimate);
    } else {
      desk.leave();
    }
  }

  private void estimate(Id<Boat> boat) {
    fleet().ifPresent(f -> estimates.begin(f, boat));
  }

  @Override
  public Topic topic() {
    return Topic.PRICE;
  }
}
