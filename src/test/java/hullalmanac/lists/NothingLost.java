package hullalmanac.lists;

import hullalmanac.core.list.Aside;
import hullalmanac.core.list.Cell;
import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks for every text of a list among what came of it: in a text of the record, as a length or a
 * year that it says, among the headings, or set aside. Knows nothing of how lists are read.
 */
final class NothingLost {
  private static final double MM_PER_FOOT = 304.8;

  /** A text that is no part of a longer word or number. */
  private static final String WHOLE = "(?<![\\p{L}\\p{N}])%s(?![\\p{L}\\p{N}])";

  private static final Set<String> DITTO = Set.of("dto.", "ditto");

  private final Set<String> texts = new HashSet<>();
  private final List<Length> lengths = new ArrayList<>();
  private final Set<String> years = new HashSet<>();

  private NothingLost(ListPlan plan, Almanac after) {
    plan.columns().forEach(c -> texts.add(plain(c.heading())));
    plan.asides().stream().map(Aside::text).forEach(t -> texts.add(plain(t)));
    after.parties().forEach(this::party);
    after.boats().forEach(this::boat);
    after.visits().stream().map(Visit::note).forEach(t -> texts.add(plain(t)));
    after.harbours().stream().map(Harbour::name).forEach(t -> texts.add(plain(t)));
    for (Berth b : after.berths()) {
      String harbour =
          after.harbours().stream()
              .filter(h -> h.id().equals(b.harbour()))
              .findFirst()
              .orElseThrow()
              .name();
      Stream.of(
              b.access().place(),
              b.secrets().keys(),
              b.secrets().gateCode(),
              harbour + " " + b.access().place())
          .forEach(t -> texts.add(plain(t)));
    }
  }

  /** Texts of cells of a list that are nowhere. */
  static List<String> missing(ListPlan plan, Grid grid, Almanac after) {
    NothingLost all = new NothingLost(plan, after);
    return grid.rows().stream()
        .flatMap(List::stream)
        .filter(c -> !c.isBlank() && !c.spread())
        .map(Cell::text)
        .filter(t -> !all.has(t))
        .distinct()
        .toList();
  }

  private void party(Party p) {
    Stream.of(p.name(), p.phone(), p.email(), p.address(), p.note())
        .forEach(t -> texts.add(plain(t)));
    texts.add(sorted(p.name()));
    texts.add(digits(p.phone()));
  }

  private void boat(Boat b) {
    Stream.of(b.name(), b.hullNumber(), b.note(), b.type().words())
        .forEach(t -> texts.add(plain(t)));
    b.loa().ifPresent(lengths::add);
    b.beam().ifPresent(lengths::add);
    b.built().ifPresent(y -> years.add(String.valueOf(y)));
  }

  /** Small letters, no accents, one blank between words; signs stay. */
  private static String plain(String text) {
    return Normalizer.normalize(
            text.replaceAll("From the list .*, row \\d+:", ""), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s+", " ")
        .strip();
  }

  private static String words(String text) {
    return plain(text).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }

  private static String sorted(String text) {
    return Arrays.stream(words(text).split(" ")).sorted().collect(Collectors.joining(" "));
  }

  private static String digits(String text) {
    return text.replaceAll("\\D", "").replaceFirst("^0+", "");
  }

  private boolean has(String text) {
    String plain = plain(text);
    boolean stands =
        texts.stream()
                .anyMatch(Pattern.compile(WHOLE.formatted(Pattern.quote(plain))).asPredicate())
            || texts.contains(sorted(text))
            || texts.stream().map(NothingLost::words).anyMatch(t -> t.equals(words(text)));
    boolean phone =
        digits(text).length() >= 6 && !text.matches(".*\\p{L}.*") && texts.contains(digits(text));
    return stands
        || phone
        || years.contains(plain)
        || isLength(plain)
        || DITTO.contains(plain)
        || inParts(text);
  }

  /** Whether each part of a text that names two boats, or a place, stands somewhere. */
  private boolean inParts(String text) {
    String[] parts = text.split("\\s*[/+&;,]\\s*|\\R");
    return parts.length > 1 && Arrays.stream(parts).allMatch(this::has);
  }

  /** Whether a boat has the length that a text says, in feet and inches, metres or less. */
  private boolean isLength(String text) {
    return millimetres(text).stream()
        .anyMatch(mm -> lengths.stream().anyMatch(l -> Math.abs(l.millimetres() - mm) <= 1));
  }

  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(\\d+(?:[.,]\\d+)?) ?(?:'|ft)(?: ?(\\d+(?:[.,]\\d+)?) ?(?:\"|in)?)?");
  private static final Pattern NUMBER = Pattern.compile("(\\d+(?:[.,]\\d+)?) ?(m|mm|cm)?");

  private static List<Double> millimetres(String text) {
    Matcher feet = FEET_AND_INCHES.matcher(text);
    if (feet.matches()) {
      double inches = feet.group(2) == null ? 0 : number(feet.group(2));
      return List.of((number(feet.group(1)) + inches / 12) * MM_PER_FOOT);
    }
    Matcher m = NUMBER.matcher(text);
    if (!m.matches()) {
      return List.of();
    }
    double n = number(m.group(1));
    if (m.group(2) == null) {
      return List.of(n * MM_PER_FOOT, n * 1000, n * 10);
    }
    return List.of(n * (m.group(2).equals("m") ? 1000 : m.group(2).equals("cm") ? 10 : 1));
  }

  private static double number(String text) {
    return new BigDecimal(text.replace(',', '.')).doubleValue();
  }
}
