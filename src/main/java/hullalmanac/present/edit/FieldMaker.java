package hullalmanac.present.edit;

import hullalmanac.core.entry.DateEntry;
import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.LengthEntry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.entry.QuantityEntry;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Unit;
import hullalmanac.core.record.With;
import hullalmanac.present.sheet.Input;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Makes fields that read and write one component of a row each; a field's id is the component's
 * name.
 *
 * @param today for dates in words and without a year
 */
public record FieldMaker(Business business, LocalDate today) {
  /** A row that can be chosen, by its name. */
  public record Named<R>(Id<R> id, String name) {}

  static <T extends Record> Entry<T> set(T row, String id, Object value, String echo) {
    try {
      return new Entry.Read<>(With.component(row, id, value), echo);
    } catch (IllegalArgumentException e) {
      return new Entry.Refused<>(sentence(e.getMessage()));
    }
  }

  private static String sentence(String words) {
    return Texts.capital(words) + ".";
  }

  /** Takes a reading as it is, or as absent when nothing was typed. */
  public static <T extends Record, V> Entry<T> maybe(T row, String id, Entry<V> entry) {
    if (entry instanceof Entry.Read<V> read) {
      return set(row, id, Optional.of(read.value()), read.echo());
    }
    return entry instanceof Entry.Refused<V> refused
        ? new Entry.Refused<>(refused.sentence())
        : set(row, id, Optional.empty(), "");
  }

  /** Takes a reading, or says what is needed when nothing was typed. */
  private static <T extends Record, V> Entry<T> needed(
      T row, String id, Entry<V> entry, String sentence) {
    return entry instanceof Entry.Empty<V>
        ? new Entry.Refused<>(sentence)
        : entry instanceof Entry.Read<V> read
            ? set(row, id, read.value(), read.echo())
            : new Entry.Refused<>(((Entry.Refused<V>) entry).sentence());
  }

  public <T extends Record> FieldOf<T> line(String id, String label, Function<T, String> get) {
    return new FieldOf<>(
        id, label, new Input.Line(""), get, (row, typed) -> set(row, id, typed.strip(), ""));
  }

  /**
   * The name of a file.
   *
   * @param made what the component is of a name; an empty one where none was typed
   */
  static <T extends Record> FieldOf<T> file(
      String id,
      String label,
      Input.FileName input,
      Function<T, String> get,
      Function<String, Object> made) {
    return new FieldOf<>(
        id, label, input, get, (row, typed) -> set(row, id, made.apply(typed.strip()), ""));
  }

  /** What is only shown, or pressed; where it is written in all the same nothing changes. */
  static <T> FieldOf<T> unwritten(String id, String label, Input input, Function<T, String> get) {
    return new FieldOf<>(
        id,
        label,
        input,
        get,
        (row, typed) ->
            typed.strip().equals(get.apply(row))
                ? new Entry.Read<>(row, "")
                : new Entry.Refused<>("Nothing is written here."));
  }

  public <T extends Record> FieldOf<T> paragraph(String id, String label, Function<T, String> get) {
    return new FieldOf<>(
        id, label, new Input.Paragraph(), get, (row, typed) -> set(row, id, typed.strip(), ""));
  }

  public <T extends Record> FieldOf<T> length(
      String id, String label, Function<T, Optional<Length>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(
            business.units() == Business.Units.FEET ? "32' 6\" or 9.9 m" : "9.9 m or 32' 6\""),
        row -> get.apply(row).map(this::length).orElse(""),
        (row, typed) ->
            get.apply(row)
                .filter(known -> length(known).equals(typed.strip()))
                // The text is rounded to whole inches or centimetres; the length behind it is not.
                .<Entry<T>>map(
                    known -> new Entry.Read<>(row, LengthEntry.echo(known, business.units())))
                .orElseGet(() -> maybe(row, id, LengthEntry.read(typed, business.units()))));
  }

  /**
   * A quantity with its unit.
   *
   * @param usual the unit of a bare number
   */
  public <T extends Record> FieldOf<T> quantity(
      String id, String label, Unit usual, Function<T, Optional<Quantity>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(usual.measure().example()),
        row -> get.apply(row).map(Quantity::exactText).orElse(""),
        (row, typed) -> maybe(row, id, QuantityEntry.read(typed, usual)));
  }

  private String length(Length length) {
    return business.units() == Business.Units.FEET ? length.feetAndInches() : length.metresText();
  }

  public <T extends Record> FieldOf<T> maybeWhole(
      String id, String label, Function<T, Optional<Integer>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(""),
        row -> get.apply(row).map(String::valueOf).orElse(""),
        (row, typed) -> maybe(row, id, NumberEntry.readWhole(typed)));
  }

  public <T extends Record> FieldOf<T> whole(String id, String label, Function<T, Integer> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(""),
        row -> String.valueOf(get.apply(row)),
        (row, typed) ->
            needed(row, id, NumberEntry.readWhole(typed), "A number is needed here, such as 4."));
  }

  /** Months as {@code 4-10} or {@code 3, 5, 9}. */
  public <T extends Record> FieldOf<T> months(
      String id, String label, Function<T, List<Month>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line("4-10"),
        row -> MonthList.text(get.apply(row)),
        (row, typed) ->
            needed(row, id, MonthList.read(typed), "Months are needed here, such as 4-10."));
  }

  /** An amount in the business's currency. */
  public <T extends Record> FieldOf<T> money(
      String id, String label, Function<T, Optional<Money>> get) {
    int decimals = business.currency().getDefaultFractionDigits();
    return new FieldOf<>(
        id,
        label + ", " + business.currency().getCurrencyCode(),
        new Input.Line(""),
        row -> get.apply(row).map(m -> m.amount().toPlainString()).orElse(""),
        (row, typed) -> maybe(row, id, money(NumberEntry.read(typed), decimals)));
  }

  /** An amount in the business's currency; one is needed. */
  <T extends Record> FieldOf<T> price(String id, String label, Function<T, Money> get) {
    int decimals = business.currency().getDefaultFractionDigits();
    return new FieldOf<>(
        id,
        label + ", " + business.currency().getCurrencyCode(),
        new Input.Line(""),
        row -> get.apply(row).amount().toPlainString(),
        (row, typed) ->
            needed(
                row,
                id,
                money(NumberEntry.read(typed), decimals),
                "An amount is needed here, such as 45."));
  }

  /** An exact number; one is needed. */
  <T extends Record> FieldOf<T> decimal(String id, String label, Function<T, BigDecimal> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(""),
        row -> get.apply(row).toPlainString(),
        (row, typed) ->
            needed(row, id, NumberEntry.read(typed), "A number is needed here, such as 2.5."));
  }

  /** An exact number, where there is one. */
  <T extends Record> FieldOf<T> maybeDecimal(
      String id, String label, Function<T, Optional<BigDecimal>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(""),
        row -> get.apply(row).map(BigDecimal::toPlainString).orElse(""),
        (row, typed) -> maybe(row, id, NumberEntry.read(typed)));
  }

  /** Taxes as {@code sales tax 7.25, county tax 1}. */
  <T extends Record> FieldOf<T> taxes(String id, String label, Function<T, List<Tax>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line("sales tax 7.25"),
        row -> get.apply(row).stream().map(Tax::text).collect(Collectors.joining(", ")),
        (row, typed) -> {
          try {
            List<Tax> taxes = Tax.parse(parted(typed));
            return set(
                row,
                id,
                taxes,
                taxes.stream().map(t -> t.text() + " %").collect(Collectors.joining(", ")));
          } catch (IllegalArgumentException e) {
            return new Entry.Refused<>(sentence(e.getMessage()));
          }
        });
  }

  /** Taxes parted by one mark; a comma before the decimals at the end of one is a point. */
  private static String parted(String taxes) {
    return taxes
        .replaceAll("(?<=\\d),(?=\\d+\\s*(?:[%,;|]|$))", ".")
        .replaceAll("[,;]", "|")
        .replaceAll("[|]\\s*(?=[|]|$)", "");
  }

  private Entry<Money> money(Entry<BigDecimal> amount, int decimals) {
    if (amount instanceof Entry.Read<BigDecimal> read
        && read.value().stripTrailingZeros().scale() > decimals) {
      return new Entry.Refused<>(
          "Amounts in "
              + business.currency().getCurrencyCode()
              + " have "
              + decimals
              + " decimals.");
    }
    return amount.map(a -> Money.of(a, business.currency()));
  }

  /** Days, parted by commas. */
  public <T extends Record> FieldOf<T> days(
      String id, String label, Function<T, List<LocalDate>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(""),
        row -> get.apply(row).stream().map(LocalDate::toString).collect(Collectors.joining(", ")),
        (row, typed) -> {
          List<LocalDate> all = new ArrayList<>();
          for (String one : typed.split(",")) {
            Entry<LocalDate> entry = DateEntry.read(one, today, business.dayOrder());
            if (entry instanceof Entry.Refused<LocalDate> refused) {
              return new Entry.Refused<>(refused.sentence());
            }
            entry.map(all::add);
          }
          return set(row, id, all, "");
        });
  }

  public <T extends Record> FieldOf<T> number(String id, String label, Function<T, Double> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(""),
        row -> Numbers.plain(get.apply(row)),
        (row, typed) ->
            needed(
                row,
                id,
                NumberEntry.read(typed).map(BigDecimal::doubleValue),
                "A number is needed here, such as 10."));
  }

  public <T extends Record> FieldOf<T> maybeNumber(
      String id, String label, Function<T, Optional<Double>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line(""),
        row -> get.apply(row).map(Numbers::plain).orElse(""),
        (row, typed) -> maybe(row, id, NumberEntry.read(typed).map(BigDecimal::doubleValue)));
  }

  public <T extends Record> FieldOf<T> maybeDay(
      String id, String label, Function<T, Optional<LocalDate>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line("12/5, today, +3m"),
        row -> get.apply(row).map(LocalDate::toString).orElse(""),
        (row, typed) -> maybe(row, id, DateEntry.read(typed, today, business.dayOrder())));
  }

  /** A day as people type it, seen from today. */
  Entry<LocalDate> readDay(String typed) {
    return DateEntry.read(typed, today, business.dayOrder());
  }

  public <T extends Record> FieldOf<T> day(String id, String label, Function<T, LocalDate> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line("12/5, today, +3m"),
        row -> get.apply(row).toString(),
        (row, typed) ->
            needed(
                row,
                id,
                DateEntry.read(typed, today, business.dayOrder()),
                "A day is needed here, such as today or 12/5."));
  }

  public <T extends Record, E extends Enum<E> & Coded> FieldOf<T> choice(
      String id, String label, Class<E> type, Function<T, E> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Choice(words(type)),
        row -> get.apply(row).words(),
        (row, typed) ->
            needed(
                row,
                id,
                oneOf(type, typed),
                "Write one of " + String.join(", ", words(type)) + "."));
  }

  public <T extends Record, E extends Enum<E> & Coded> FieldOf<T> maybeChoice(
      String id, String label, Class<E> type, Function<T, Optional<E>> get) {
    List<String> words = new ArrayList<>(words(type));
    words.add(0, "");
    return new FieldOf<>(
        id,
        label,
        new Input.Choice(words),
        row -> get.apply(row).map(Coded::words).orElse(""),
        (row, typed) -> maybe(row, id, oneOf(type, typed)));
  }

  public <T extends Record> FieldOf<T> yesNo(String id, String label, Function<T, Boolean> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Choice(List.of("no", "yes")),
        row -> get.apply(row) ? "yes" : "no",
        (row, typed) -> {
          String t = typed.strip().toLowerCase(Locale.ROOT);
          if (t.isEmpty() || !("yes".startsWith(t) || "no".startsWith(t))) {
            return new Entry.Refused<>("Write yes or no.");
          }
          return set(row, id, "yes".startsWith(t), "");
        });
  }

  /** One of some rows, chosen by name. */
  public <T extends Record, R> FieldOf<T> maybeOf(
      String id, String label, List<Named<R>> all, Function<T, Optional<Id<R>>> get) {
    List<String> names = new ArrayList<>(all.stream().map(Named::name).toList());
    names.add(0, "");
    return new FieldOf<>(
        id,
        label,
        new Input.Choice(names),
        row ->
            get.apply(row)
                .flatMap(i -> all.stream().filter(n -> n.id().equals(i)).findFirst())
                .map(Named::name)
                .orElse(""),
        (row, typed) -> maybe(row, id, byName(all, typed)));
  }

  /** One of some rows, chosen by name; one is needed. */
  public <T extends Record, R> FieldOf<T> of(
      String id, String label, List<Named<R>> all, Function<T, Id<R>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Choice(all.stream().map(Named::name).toList()),
        row ->
            all.stream()
                .filter(n -> n.id().equals(get.apply(row)))
                .map(Named::name)
                .findFirst()
                .orElse(""),
        (row, typed) -> needed(row, id, byName(all, typed), "Choose one of the list."));
  }

  private static <R> Entry<Id<R>> byName(List<Named<R>> all, String typed) {
    return oneOf(all.stream().map(Named::name).toList(), typed)
        .map(
            name -> all.stream().filter(n -> n.name().equals(name)).findFirst().orElseThrow().id());
  }

  static <E extends Enum<E> & Coded> List<String> words(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Coded::words).toList();
  }

  /** The choice a text begins like. */
  static <E extends Enum<E> & Coded> Entry<E> oneOf(Class<E> type, String typed) {
    return oneOf(words(type), typed)
        .map(
            word ->
                Arrays.stream(type.getEnumConstants())
                    .filter(e -> e.words().equals(word))
                    .findFirst()
                    .orElseThrow());
  }

  /** The word a text is or, when it is the only one, begins. */
  static Entry<String> oneOf(List<String> words, String typed) {
    String t = typed.strip().toLowerCase(Locale.ROOT);
    if (t.isEmpty()) {
      return new Entry.Empty<>();
    }
    List<String> same = words.stream().filter(w -> w.toLowerCase(Locale.ROOT).equals(t)).toList();
    List<String> begun =
        same.isEmpty()
            ? words.stream().filter(w -> w.toLowerCase(Locale.ROOT).startsWith(t)).toList()
            : same;
    if (begun.size() == 1) {
      return new Entry.Read<>(
          begun.get(0), begun.get(0).equalsIgnoreCase(typed.strip()) ? "" : begun.get(0));
    }
    List<String> could = begun.isEmpty() ? words : begun;
    return new Entry.Refused<>(
        "Write one of "
            + String.join(", ", could.stream().filter(w -> !w.isEmpty()).limit(12).toList())
            + (could.size() > 12 ? " …" : "")
            + ".");
  }
}
