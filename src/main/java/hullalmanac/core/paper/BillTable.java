package hullalmanac.core.paper;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceLine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Lines with prices, and what they come to. */
final class BillTable {
  private BillTable() {}

  /**
   * A table of a bill.
   *
   * @param inclusive whether prices hold the taxes already
   * @param more rows below the total: what was paid, what is left
   */
  static Block.Table of(String caption, Bill bill, boolean inclusive, List<Sum> more) {
    boolean taxed = !bill.taxes().isEmpty();
    List<Block.Column> columns = new ArrayList<>();
    columns.add(Block.Column.words("What for"));
    columns.add(Block.Column.number("Quantity", 15));
    columns.add(Block.Column.number("Price", 17));
    if (taxed) {
      columns.add(Block.Column.number("Taxes", 20));
    }
    columns.add(Block.Column.number("Amount", 18));
    List<List<String>> rows =
        bill.items().stream().map(item -> row(item.line(), item.amount(), taxed)).toList();
    List<Sum> sums = new ArrayList<>();
    if (bill.discount().isPositive()) {
      sums.add(Sum.of("Discount", bill.discount().negated()));
    }
    if (taxed) {
      sums.add(Sum.of("Without taxes", bill.net()));
      bill.taxes()
          .forEach(t -> sums.add(Sum.of(t.tax().text() + " % of " + t.base().words(), t.amount())));
    }
    sums.add(
        new Sum(
            taxed && inclusive ? "Total, taxes in it" : "Total",
            bill.total().words(),
            more.stream().noneMatch(Sum::strong)));
    sums.addAll(more);
    return new Block.Table(
        caption, columns, rows, sums.stream().map(s -> s.row(columns.size())).toList());
  }

  /** A row below the lines. */
  record Sum(String name, String amount, boolean strong) {
    static Sum of(String name, Money amount) {
      return new Sum(name, amount.words(), false);
    }

    static Sum strong(String name, Money amount) {
      return new Sum(name, amount.words(), true);
    }

    private Block.SumRow row(int columns) {
      List<String> row = new ArrayList<>();
      row.add(name);
      while (row.size() < columns - 1) {
        row.add("");
      }
      row.add(amount);
      return new Block.SumRow(row, strong);
    }
  }

  private static List<String> row(PriceLine line, Money amount, boolean taxed) {
    List<String> row = new ArrayList<>();
    row.add(line.words());
    row.add(line.unit().words(line.quantity()));
    row.add(line.price().words());
    if (taxed) {
      row.add(line.taxes().stream().map(t -> t.text() + " %").collect(Collectors.joining("\n")));
    }
    row.add(amount.words());
    return row;
  }
}
