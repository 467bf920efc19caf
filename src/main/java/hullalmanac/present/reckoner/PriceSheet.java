package hullalmanac.present.reckoner;

import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.LengthPrice;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.Optional;

/** A price by length, and for the whole boat. */
final class PriceSheet extends Calculator<PriceSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("foot"), blank("metre"), blank("total"));

  /** What an amount is for. */
  public enum Per implements Coded {
    BOAT("the-whole-boat"),
    FOOT("a-foot"),
    METRE("a-metre");

    private final String code;

    Per(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** What is given; public so that it can be copied with one component changed. */
  public record Given(
      Optional<Id<Boat>> boat, Optional<Length> length, Optional<Money> amount, Per per) {}

  PriceSheet() {
    super(new Given(Optional.empty(), Optional.empty(), Optional.empty(), Per.BOAT));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Price per foot", "From a total, and back");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(
        make.length("length", "Length", Given::length),
        make.maybeOf("boat", "or a boat’s length over all", FromRecord.boats(fleet), Given::boat),
        make.money("amount", "Amount", Given::amount),
        make.choice("per", "That is for", Per.class, Given::per));
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    Optional<Length> length =
        given.length().or(() -> FromRecord.boat(fleet, given.boat()).flatMap(Boat::loa));
    if (length.isEmpty() || given.amount().isEmpty()) {
      return Reckoned.nothing(BLANK, "Write a length and an amount.");
    }
    LengthPrice price =
        switch (given.per()) {
          case BOAT -> new LengthPrice(given.amount().get(), length.get());
          case FOOT -> LengthPrice.ofFoot(given.amount().get(), length.get());
          case METRE -> LengthPrice.ofMetre(given.amount().get(), length.get());
        };
    return Reckoned.of(
        money("foot", "A foot", price.foot()),
        money("metre", "A metre", price.metre()),
        money("total", FromRecord.length(fleet, length.get()), price.total()));
  }

  private static Answer money(String id, String label, Money money) {
    String amount = money.amount().toPlainString();
    return new Answer(id, label, amount + " " + money.currency().getCurrencyCode(), amount);
  }

  @Override
  List<Formula> formulas() {
    return List.of(LengthPrice.FORMULA);
  }
}
