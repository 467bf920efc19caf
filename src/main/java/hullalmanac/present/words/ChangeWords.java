package hullalmanac.present.words;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The fields of the change log as a person calls them, and what stands in them. */
public record ChangeWords(Business business, ZoneId zone) {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);
  private static final Map<String, String> NAMES =
      Map.of(
          "loa_mm", "length",
          "timed_since", "timed since",
          "ended_how", "how it ended",
          "ended_seen", "state when it ended",
          "tax_inclusive", "taxes are in the prices",
          "tax_at", "taxes are rounded",
          "sequence", "place in the series");
  private static final Set<String> YES_OR_NO =
      Set.of("yearly", "soot", "leaves_wax", "label_for_cars", "non_slip", "tax_inclusive");
  private static final Pattern UNIT = Pattern.compile("_(mm|ml|minor)$");
  private static final Pattern CODE = Pattern.compile("[a-z]+(-[a-z]+)+");

  /** A moment as the clock on the wall shows it. */
  public String time(Instant at) {
    return TIME.withZone(zone).format(at);
  }

  /** The name of a field. */
  public static String name(String field) {
    String bare = UNIT.matcher(field).replaceFirst("");
    return NAMES.getOrDefault(field, bare.replaceFirst("_percent$", ", %").replace('_', ' '));
  }

  /** What stood in a field; empty where nothing did. */
  public String value(String field, Optional<String> value) {
    return value.filter(v -> !v.isEmpty()).map(v -> value(field, v)).orElse("");
  }

  private String value(String field, String value) {
    if (field.equals("timed_since")) {
      return time(Instant.parse(value));
    }
    if (field.endsWith("_mm")) {
      Length length = new Length(Integer.parseInt(value));
      return business.units() == Business.Units.FEET ? length.feetAndInches() : length.metresText();
    }
    if (field.endsWith("_minor")) {
      return new Money(Long.parseLong(value), business.currency()).words();
    }
    if (field.endsWith("_ml")) {
      return value + " ml";
    }
    if (field.equals("signature")) {
      return "drawn";
    }
    if (YES_OR_NO.contains(field)) {
      return value.equals("1") ? "yes" : "no";
    }
    return CODE.matcher(value).matches() ? value.replace('-', ' ') : value;
  }
}
