package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.StepKind;
import hullalmanac.present.sheet.Input;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Fields of estimates, invoices and their lines. */
final class MoneyFields {
  private final FieldMaker make;

  MoneyFields(FieldMaker make) {
    this.make = make;
  }

  List<FieldOf<PriceLine>> line() {
    return List.of(
        make.line("words", "What for", PriceLine::words),
        make.decimal("quantity", "Quantity", PriceLine::quantity),
        make.choice("unit", "Unit", PriceUnit.class, PriceLine::unit),
        make.price("price", "Price", PriceLine::price),
        make.taxes("taxes", "Taxes, %", PriceLine::taxes),
        make.line("service", "Counts as", PriceLine::service));
  }

  List<FieldOf<Invoice>> invoice() {
    return List.of(
        make.maybeDecimal("discount.percent", "Discount, %", i -> i.discount().percent()),
        make.money("discount.amount", "or an amount", i -> i.discount().amount()),
        make.yesNo("terms.inclusive", "Prices hold their taxes", i -> i.terms().inclusive()),
        make.paragraph("note", "Note, not printed", Invoice::note));
  }

  List<FieldOf<Estimate>> estimate(List<Party> parties) {
    List<FieldMaker.Named<Party>> names =
        parties.stream().map(p -> new FieldMaker.Named<>(p.id(), p.name())).toList();
    return List.of(
        make.maybeOf("party", "For", names, Estimate::party),
        make.day("day", "Made on", Estimate::day),
        make.day("validUntil", "Valid until", Estimate::validUntil),
        make.maybeDecimal("deposit.percent", "Deposit, %", e -> e.deposit().percent()),
        make.money("deposit.amount", "or an amount", e -> e.deposit().amount()),
        make.yesNo("terms.inclusive", "Prices hold their taxes", e -> e.terms().inclusive()),
        make.paragraph("note", "Note, not printed", Estimate::note));
  }

  List<FieldOf<Estimate.Expectation>> expectation() {
    return List.of(
        make.choice("result", "What becomes of it", Estimate.Result.class, x -> x.result()),
        make.line("words", "Of what", Estimate.Expectation::words));
  }

  List<FieldOf<Estimate.Option>> option() {
    return List.of(
        make.line("name", "Name", Estimate.Option::name),
        steps("Steps, in order", Estimate.Option::steps, all -> all),
        make.maybeDecimal("discount.percent", "Discount, %", o -> o.discount().percent()),
        make.money("discount.amount", "or an amount", o -> o.discount().amount()),
        make.line("note", "Note, not printed", Estimate.Option::note));
  }

  /** Kinds of step, parted by commas, in order. */
  static <T extends Record> FieldOf<T> steps(
      String label,
      Function<T, ? extends Collection<StepKind>> get,
      Function<List<StepKind>, Collection<StepKind>> kept) {
    return new FieldOf<>(
        "steps",
        label,
        new Input.Line("wash, polish, protect"),
        row -> get.apply(row).stream().map(StepKind::words).collect(Collectors.joining(", ")),
        (row, typed) -> {
          List<StepKind> all = new ArrayList<>();
          for (String word : typed.split(",", -1)) {
            Entry<StepKind> entry = FieldMaker.oneOf(StepKind.class, word);
            if (entry instanceof Entry.Refused<StepKind> refused) {
              return new Entry.Refused<>(refused.sentence());
            }
            entry.map(all::add);
          }
          return FieldMaker.set(row, "steps", kept.apply(all), "");
        });
  }

  /** Fields of a value as fields of what holds it. */
  static <T, V> List<FieldOf<T>> within(
      List<FieldOf<V>> fields, Function<T, V> get, BiFunction<T, V, T> with) {
    return fields.stream()
        .map(
            f ->
                new FieldOf<T>(
                    f.id(),
                    f.label(),
                    f.input(),
                    t -> f.text().apply(get.apply(t)),
                    (t, typed) -> f.enter().apply(get.apply(t), typed).map(v -> with.apply(t, v))))
        .toList();
  }
}
