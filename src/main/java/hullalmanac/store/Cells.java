package hullalmanac.store;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.TaxTerms;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The cells of one row as it is read. A NULL is absent, never 0 or empty. */
final class Cells {
  private final ResultSet rows;

  Cells(ResultSet rows) {
    this.rows = rows;
  }

  String text(String column) throws SQLException {
    return rows.getString(column);
  }

  Optional<String> maybeText(String column) throws SQLException {
    return Optional.ofNullable(rows.getString(column));
  }

  long number(String column) throws SQLException {
    return rows.getLong(column);
  }

  int whole(String column) throws SQLException {
    return rows.getInt(column);
  }

  Optional<Integer> maybeWhole(String column) throws SQLException {
    int value = rows.getInt(column);
    return rows.wasNull() ? Optional.empty() : Optional.of(value);
  }

  double real(String column) throws SQLException {
    return rows.getDouble(column);
  }

  Optional<Double> maybeReal(String column) throws SQLException {
    double value = rows.getDouble(column);
    return rows.wasNull() ? Optional.empty() : Optional.of(value);
  }

  BigDecimal decimal(String column) throws SQLException {
    return new BigDecimal(rows.getString(column));
  }

  Optional<BigDecimal> maybeDecimal(String column) throws SQLException {
    return maybeText(column).map(BigDecimal::new);
  }

  Money money(String column, Currency currency) throws SQLException {
    return new Money(rows.getLong(column), currency);
  }

  Optional<Money> maybeMoney(String column, Currency currency) throws SQLException {
    long minor = rows.getLong(column);
    return rows.wasNull() ? Optional.empty() : Optional.of(new Money(minor, currency));
  }

  /** A part of a sum, from a column in percent and one in minor units. */
  Share share(String name, Currency currency) throws SQLException {
    return new Share(maybeDecimal(name + "_percent"), maybeMoney(name + "_minor", currency));
  }

  TaxTerms terms() throws SQLException {
    return new TaxTerms(
        flag("tax_inclusive"),
        coded(TaxTerms.At.class, "tax_at"),
        coded(TaxTerms.Rounding.class, "rounding"));
  }

  boolean flag(String column) throws SQLException {
    return rows.getInt(column) == 1;
  }

  LocalDate day(String column) throws SQLException {
    return LocalDate.parse(rows.getString(column));
  }

  Optional<LocalDate> maybeDay(String column) throws SQLException {
    return maybeText(column).map(LocalDate::parse);
  }

  Optional<LocalDateTime> maybeTime(String column) throws SQLException {
    return maybeText(column).map(LocalDateTime::parse);
  }

  Optional<Instant> maybeInstant(String column) throws SQLException {
    return maybeText(column).map(Instant::parse);
  }

  Optional<Length> maybeLength(String column) throws SQLException {
    return maybeWhole(column).map(Length::new);
  }

  <T> Id<T> id(String column) throws SQLException {
    return new Id<>(rows.getLong(column));
  }

  <T> Optional<Id<T>> maybeId(String column) throws SQLException {
    long value = rows.getLong(column);
    return rows.wasNull() ? Optional.empty() : Optional.of(new Id<>(value));
  }

  <E extends Enum<E> & Coded> E coded(Class<E> type, String column) throws SQLException {
    String code = rows.getString(column);
    return Coded.parse(type, code)
        .orElseThrow(
            () -> new IllegalStateException("no " + type.getSimpleName() + " is called " + code));
  }

  <E extends Enum<E> & Coded> Optional<E> maybeCoded(Class<E> type, String column)
      throws SQLException {
    return rows.getString(column) == null ? Optional.empty() : Optional.of(coded(type, column));
  }

  /** A list kept in one column, parted by blanks. */
  <T> List<T> list(String column, Function<String, T> one) throws SQLException {
    String all = rows.getString(column);
    return all.isBlank() ? List.of() : Arrays.stream(all.split(" ")).map(one).toList();
  }
}
