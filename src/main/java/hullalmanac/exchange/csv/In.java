package hullalmanac.exchange.csv;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Decimals;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Numbers;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One row as it is read. Each cell that cannot be taken is noted as a problem and something
 * harmless returned in its place, so that all problems of a row come out at once; the row itself is
 * then not made.
 */
final class In {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final Pattern FEET =
      Pattern.compile(
          "(\\d{1,3}(?:\\.\\d+)?)\\s*(?:ft|')\\s*(?:(\\d{1,2}(?:\\.\\d+)?)\\s*(?:in|\")?)?");

  private final Map<String, String> cells;
  private final Context context;
  private final long line;
  private boolean sound = true;

  /**
   * What a row is read against.
   *
   * @param file name of the file
   * @param decimalComma whether a comma may stand before the decimals
   */
  record Context(String file, boolean decimalComma, Keys keys, List<CsvProblem> problems) {}

  In(Map<String, String> cells, Context context, long line) {
    this.cells = cells;
    this.context = context;
    this.line = line;
  }

  long line() {
    return line;
  }

  void problem(String column, String message, String advice) {
    sound = false;
    context.problems().add(new CsvProblem(context.file(), line, column, message, advice));
  }

  /**
   * Makes the row's value if every cell could be taken; what the value itself refuses is a problem
   * too.
   */
  <T> Optional<T> made(Supplier<T> value) {
    if (!sound) {
      return Optional.empty();
    }
    try {
      return Optional.of(value.get());
    } catch (IllegalArgumentException e) {
      problem("", e.getMessage(), "Correct the row");
      return Optional.empty();
    }
  }

  String text(String column) {
    return Guard.off(cells.getOrDefault(column, ""));
  }

  private String value(String column) {
    return cells.getOrDefault(column, "").strip();
  }

  Optional<String> maybeText(String column) {
    return Optional.of(text(column)).filter(t -> !t.isEmpty());
  }

  String key(String column) {
    return text(column).strip();
  }

  <T> Optional<T> maybe(String column, Function<String, T> reader, String advice) {
    String value = value(column);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reader.apply(value));
    } catch (IllegalArgumentException e) {
      problem(column, e.getMessage(), advice);
      return Optional.empty();
    }
  }

  Optional<LocalDate> maybeDay(String column) {
    return maybe(column, In::dayOf, "Write the day as 2026-05-01");
  }

  LocalDate day(String column) {
    return maybeDay(column).orElse(LocalDate.EPOCH);
  }

  static LocalDate dayOf(String text) {
    LocalDate day;
    try {
      day = LocalDate.parse(text, DAY);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("there is no day \"" + text + "\"", e);
    }
    if (day.getYear() < 1950 || day.getYear() > 2150) {
      throw new IllegalArgumentException("the year of " + text + " cannot be meant");
    }
    return day;
  }

  Optional<LocalDateTime> maybeTime(String column) {
    return maybe(
        column,
        t -> {
          try {
            return LocalDateTime.parse(t);
          } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("there is no time \"" + t + "\"", e);
          }
        },
        "Write it as 2026-05-01T14:30:00");
  }

  Optional<Instant> maybeInstant(String column) {
    return maybe(
        column,
        t -> {
          try {
            Instant moment = Instant.parse(t);
            dayOf(t.substring(0, t.indexOf('T')));
            return moment;
          } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("there is no moment \"" + t + "\"", e);
          }
        },
        "Write it in UTC as 2026-05-01T12:30:00Z");
  }

  double realOf(String text) {
    return Numbers.real(pointed(text));
  }

  /** An exact decimal number. */
  BigDecimal decimalOf(String text) {
    return Decimals.parse(pointed(text));
  }

  private String pointed(String text) {
    boolean comma =
        context.decimalComma()
            && text.indexOf('.') < 0
            && text.indexOf(',') == text.lastIndexOf(',');
    return comma ? text.replace(',', '.') : text;
  }

  Optional<Double> maybeReal(String column) {
    return maybe(column, this::realOf, "Write a number such as 85.5");
  }

  double real(String column) {
    return maybeReal(column).orElse(0.0);
  }

  Optional<Integer> maybeWhole(String column) {
    return maybe(column, Numbers::whole, "Write a whole number");
  }

  boolean flag(String column) {
    return maybe(
            column,
            t ->
                switch (t.toLowerCase(Locale.ROOT)) {
                  case "yes", "y", "true", "1" -> true;
                  case "no", "n", "false", "0" -> false;
                  default ->
                      throw new IllegalArgumentException("\"" + t + "\" is neither yes nor no");
                },
            "Write yes or no")
        .orElse(false);
  }

  <E extends Enum<E> & Coded> Optional<E> maybeCoded(Class<E> type, String column) {
    return maybe(
        column,
        t ->
            Coded.parse(type, t)
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "\"" + t + "\" is not one of the words for it")),
        "Write one of " + Coded.allCodes(type));
  }

  <E extends Enum<E> & Coded> E coded(Class<E> type, String column, E otherwise) {
    return maybeCoded(type, column).orElse(otherwise);
  }

  <T> List<T> list(String column, Function<String, T> reader, String advice) {
    return maybe(
            column,
            all -> Arrays.stream(all.split("\\|")).map(String::strip).map(reader).toList(),
            advice)
        .orElse(List.of());
  }

  <T> Optional<Id<T>> maybeRef(Kind kind, String column) {
    String key = key(column);
    if (key.isEmpty()) {
      return Optional.empty();
    }
    return ref(kind, column, key);
  }

  private <T> Optional<Id<T>> ref(Kind kind, String column, String key) {
    Optional<Id<T>> id = context.keys().find(kind, key);
    if (id.isEmpty()) {
      problem(
          column,
          "there is no " + kind.one() + " with the id \"" + key + "\"",
          context
              .keys()
              .nearest(kind, key)
              .map(n -> "Is \"" + n + "\" meant")
              .orElse("Add it to " + kind.code() + ".csv, or correct the id"));
    }
    return id;
  }

  <T> Id<T> ref(Kind kind, String column) {
    return this.<T>maybeRef(kind, column).orElseGet(() -> new Id<>(1));
  }

  <T> List<Id<T>> refs(Kind kind, String column) {
    String all = key(column);
    return all.isEmpty()
        ? List.of()
        : Arrays.stream(all.split("\\|"))
            .map(k -> this.<T>ref(kind, column, k.strip()).orElseGet(() -> new Id<>(1)))
            .toList();
  }

  /** A length from a column in metres, or from one in feet. */
  Optional<Length> maybeLength(String name) {
    Optional<Length> metres =
        maybe(name + "_m", t -> Length.ofMetres(realOf(t)), "Write metres such as 9.5");
    return metres.isPresent()
        ? metres
        : maybe(name + "_ft", this::feet, "Write feet such as 31.2, or 31 ft 2 in");
  }

  private Length feet(String text) {
    Matcher matcher = FEET.matcher(text);
    if (matcher.matches()) {
      double inches = matcher.group(2) == null ? 0 : Double.parseDouble(matcher.group(2));
      if (inches >= 12) {
        throw new IllegalArgumentException("\"" + text + "\" has twelve inches or more");
      }
      return Length.ofFeet(Double.parseDouble(matcher.group(1)), inches);
    }
    return Length.ofFeet(realOf(text), 0);
  }
}
