package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.price.StarterRates;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.work.NewKeys;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** What a foot or a metre costs, by service, condition, type and length. */
public final class RatesSheet extends FleetSheet {
  private final Rows<Rate> rates;

  public RatesSheet(Desk desk) {
    super(desk);
    rates =
        new Rows<>(
            Rows.Block.plain(
                "rates",
                "",
                f ->
                    f.almanac().books().rates().stream()
                        .sorted(Comparator.comparing(Rate::service).thenComparing(Rate::key))
                        .toList(),
                Rate::service,
                f -> fields(new FieldMaker(f.almanac().business(), f.asOf()))),
            desk);
  }

  private static List<FieldOf<Rate>> fields(FieldMaker make) {
    return List.of(
        make.line("service", "Service", Rate::service),
        MoneyFields.steps("Steps", Rate::steps, TreeSet::new),
        make.choice("extent", "Of the", Extent.class, Rate::extent),
        make.choice("unit", "By the", PriceUnit.class, Rate::unit),
        make.price("low", "From", Rate::low),
        make.price("high", "To", Rate::high),
        make.maybeChoice("condition", "Condition", Condition.class, Rate::condition),
        make.maybeChoice("type", "Type", BoatType.class, Rate::type),
        make.length("from", "Boats from", Rate::from),
        make.length("below", "to under", Rate::below),
        make.line("note", "Note", Rate::note));
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(rates);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Almanac almanac = fleet.almanac();
    List<SheetState.Button> buttons = new ArrayList<>();
    buttons.add(new SheetState.Button("add", "Add a rate", true));
    if (almanac.books().rates().isEmpty()
        && !StarterRates.of(almanac.business().currency(), desk.ids()).isEmpty()) {
      buttons.add(new SheetState.Button("starters", "Begin with the starter rate", false));
    }
    return new SheetState(
        "Rates by length",
        "What a foot or a metre costs, without regard to taxes. Empty is for any: the rate that"
            + " says most of a boat is taken.",
        List.of(rates.grid(fleet, "No rate is written down yet."), new SheetState.Buttons(buttons)),
        Optional.empty());
  }

  @Override
  public void remove(String block, String row) {
    fleet()
        .flatMap(
            f ->
                f.almanac().books().rates().stream()
                    .filter(r -> r.id().toString().equals(row))
                    .findFirst())
        .ifPresent(r -> desk.change("a rate removed", almanac -> Removal.of(almanac, r)));
  }

  @Override
  public void press(String button) {
    if (button.equals("add")) {
      desk.edit("a rate added", almanac -> Edit.put(blank(almanac, desk.ids())));
    } else {
      desk.edit(
          "the starter rate added",
          almanac ->
              Edit.put(
                  StarterRates.of(almanac.business().currency(), desk.ids()).toArray(Row[]::new)));
    }
  }

  private static Rate blank(Almanac almanac, IdSource ids) {
    Business business = almanac.business();
    return new Rate(
        ids.next(),
        new NewKeys(almanac).next(Kind.RATE, "rate"),
        "new service",
        new TreeSet<>(EnumSet.of(StepKind.WASH)),
        Extent.WHOLE_BOAT,
        business.units() == Business.Units.FEET ? PriceUnit.FOOT : PriceUnit.METRE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Money.zero(business.currency()),
        Money.zero(business.currency()),
        "");
  }

  @Override
  public Topic topic() {
    return Topic.PRICE;
  }
}
