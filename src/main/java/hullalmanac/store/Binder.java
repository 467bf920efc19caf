package hullalmanac.store;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.TaxTerms;
import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** Sets the named parameters of a statement, each value in the form in which the file keeps it. */
final class Binder {
  private final PreparedStatement statement;
  private final List<String> names;
  private int set;

  Binder(PreparedStatement statement, List<String> names) {
    this.statement = statement;
    this.names = names;
  }

  /** Sets a parameter; an absent value becomes NULL. */
  Binder set(String name, Object value) throws SQLException {
    int place = names.indexOf(name) + 1;
    if (place == 0) {
      throw new IllegalArgumentException("the statement has no parameter " + name);
    }
    Object plain = plain(value);
    if (plain == null) {
      statement.setNull(place, Types.NULL);
    } else {
      statement.setObject(place, plain);
    }
    set++;
    return this;
  }

  /** Sets the two columns of a part of a sum. */
  Binder share(String name, Share share) throws SQLException {
    return set(name + "_percent", share.percent()).set(name + "_minor", share.amount());
  }

  /** Sets the three columns of how taxes are reckoned. */
  Binder terms(TaxTerms terms) throws SQLException {
    return set("tax_inclusive", terms.inclusive())
        .set("tax_at", terms.at())
        .set("rounding", terms.rounding());
  }

  /** Refuses to go on with a parameter forgotten. */
  void finish() {
    if (set != names.size()) {
      throw new IllegalStateException(
          set + " of " + names.size() + " parameters were set: " + names);
    }
    set = 0;
  }

  private static Object plain(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(Binder::plain).orElse(null);
    }
    if (value instanceof Coded coded) {
      return coded.code();
    }
    if (value instanceof Id<?> id) {
      return id.value();
    }
    if (value instanceof Length length) {
      return length.millimetres();
    }
    if (value instanceof Money money) {
      return money.minor();
    }
    if (value instanceof BigDecimal number) {
      return number.toPlainString();
    }
    if (value instanceof Boolean flag) {
      return flag ? 1 : 0;
    }
    if (value instanceof LocalDate || value instanceof LocalDateTime || value instanceof Instant) {
      return value.toString();
    }
    return value;
  }
}
