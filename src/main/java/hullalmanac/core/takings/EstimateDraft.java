package hullalmanac.core.takings;

import hullalmanac.core.price.LengthPrice;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Estimates as they begin. */
public final class EstimateDraft {
  /** How long an estimate holds unless said otherwise, in days (common practice, no source). */
  public static final int VALID_DAYS = 28;

  private static final List<String> NAMES = List.of("good", "better", "best");

  private EstimateDraft() {}

  /**
   * An estimate to be written: what the last look lets expect, and an option for each of the three
   * services that pay for most and whose rates fit the boat, the cheapest first; an empty option
   * where none fits.
   */
  public static Edit of(Almanac almanac, IdSource ids, Id<Boat> id, LocalDate day) {
    Boat boat = Accounts.row(almanac.boats(), id);
    return Edit.put(
        new Estimate(
            ids.next(),
            new NewKeys(almanac).next(Kind.ESTIMATE, boat.key(), day),
            id,
            Payer.of(almanac, id, day).map(Party::id),
            day,
            day.plusDays(VALID_DAYS),
            Expecting.of(almanac, id),
            options(almanac, boat),
            Share.NONE,
            almanac.business().billing().terms(),
            Estimate.State.DRAFT,
            Optional.empty(),
            Optional.empty(),
            ""));
  }

  /**
   * An estimate with other options; one that was answered stays as it was.
   *
   * @param change what becomes of its options as they stand
   */
  public static Change options(
      Almanac almanac, Id<Estimate> id, UnaryOperator<List<Estimate.Option>> change) {
    return changed(
        almanac, id, e -> With.component(e, "options", change.apply(new ArrayList<>(e.options()))));
  }

  /** An estimate with something else in it; one that was answered stays as it was. */
  public static Change changed(Almanac almanac, Id<Estimate> id, UnaryOperator<Estimate> change) {
    Estimate estimate = Accounts.row(almanac.books().estimates(), id);
    if (estimate.answer().isPresent()) {
      return Change.refused(
          new Problem(
              Kind.ESTIMATE,
              estimate.key(),
              "state",
              "the estimate was " + estimate.state().words() + " and stays as it was",
              "Write a new estimate"));
    }
    try {
      return Change.checked(almanac, Edit.put(change.apply(estimate)));
    } catch (IllegalArgumentException e) {
      return Change.refused(
          new Problem(Kind.ESTIMATE, estimate.key(), "", e.getMessage(), "Write something else"));
    }
  }

  /** An option to be written, under a name that is free. */
  public static Estimate.Option blank(Estimate estimate) {
    List<String> taken = estimate.options().stream().map(Estimate.Option::name).toList();
    String name =
        NAMES.stream()
            .filter(n -> !taken.contains(n))
            .findFirst()
            .orElseGet(() -> "option " + (taken.size() + 1));
    return new Estimate.Option(name, List.of(), List.of(), List.of(), Share.NONE, "");
  }

  private static List<Estimate.Option> options(Almanac almanac, Boat boat) {
    List<LengthPrice> prices =
        prices(almanac, boat).stream()
            .sorted(Comparator.comparing((LengthPrice p) -> p.rate().steps().size()).reversed())
            .limit(NAMES.size())
            .sorted(Comparator.comparing(LengthPrice::middle))
            .toList();
    if (prices.isEmpty()) {
      return List.of(
          new Estimate.Option(NAMES.get(0), List.of(), List.of(), List.of(), Share.NONE, ""));
    }
    List<Estimate.Option> options = new ArrayList<>();
    for (LengthPrice price : prices) {
      options.add(option(almanac, boat, NAMES.get(options.size()), price));
    }
    return options;
  }

  /** The price of each service for a boat, nobody having said in what condition she is. */
  private static List<LengthPrice> prices(Almanac almanac, Boat boat) {
    List<String> services =
        almanac.books().rates().stream()
            .sorted(Comparator.comparing(Rate::key))
            .map(Rate::service)
            .distinct()
            .toList();
    return boat.loa().stream()
        .flatMap(
            length ->
                services.stream()
                    .map(
                        s ->
                            new LengthPrice.Asked(
                                s, length, Optional.empty(), Optional.of(boat.type())))
                    .flatMap(a -> LengthPrice.of(almanac.books().rates(), a).stream()))
        .toList();
  }

  private static Estimate.Option option(
      Almanac almanac, Boat boat, String name, LengthPrice price) {
    Rate rate = price.rate();
    Set<Extent> parts = rate.extent().parts();
    List<Id<Surface>> surfaces =
        rate.extent() == Extent.WHOLE_BOAT
            ? List.of()
            : almanac.surfaces().stream()
                .filter(s -> s.boat().equals(boat.id()))
                .filter(s -> parts.contains(Extent.of(s.kind())))
                .map(Surface::id)
                .toList();
    PriceLine line =
        new PriceLine(
            rate.service(),
            rate.service(),
            price.quantity(),
            rate.unit(),
            price.unitPrice(),
            almanac.business().billing().taxes(),
            Optional.empty());
    return new Estimate.Option(
        name, List.copyOf(rate.steps()), surfaces, List.of(line), Share.NONE, "");
  }
}
