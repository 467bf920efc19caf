package hullalmanac.present.edit;

import hullalmanac.core.report.DateWords;
import hullalmanac.core.supply.BottleLeft;
import hullalmanac.core.supply.Enough;
import hullalmanac.core.supply.PadWear;
import hullalmanac.core.supply.Supplies;
import hullalmanac.present.sheet.SheetState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Supplies in words. */
record SuppliesWords(LocalDate today) {
  static final String RECKONED =
      "A step takes the area of its surfaces, as plans of correction reckon it, times ml for a m²"
          + " and passes; a wash only its share of product. Starter values and the life of a pad are"
          + " common practice, no source. Enough is what lasts 9 times in 10. What you write as left"
          + " counts the work of that day; nothing is changed in a bottle when a visit is finished.";

  static String left(BottleLeft b) {
    return b.left().map(SuppliesWords::ml).orElse("not known");
  }

  private static String ml(double ml) {
    return String.valueOf(Math.round(ml));
  }

  private static String steps(int n) {
    return n == 1 ? "1 step" : n + " steps";
  }

  String why(BottleLeft b) {
    DateWords dates = new DateWords(today);
    String start =
        switch (b.start()) {
          case SEEN ->
              b.from().orElseThrow() + " on " + dates.exact(b.bottle().leftOn().orElseThrow());
          case SEEN_SOME_DAY ->
              b.from().orElseThrow() + " as written, not known when: nothing is taken off";
          case FULL -> b.from().orElseThrow() + " when full";
          case UNKNOWN -> "neither what it held nor what is left is written";
        };
    List<String> parts = new ArrayList<>();
    parts.add(start);
    if (b.steps() > 0) {
      parts.add(
          "less "
              + ml(b.drawn())
              + " by "
              + steps(b.steps())
              + " ("
              + String.join(", ", b.origins())
              + ")");
    }
    if (b.gaps() > 0) {
      parts.add(steps(b.gaps()) + " of unknown area or dilution");
    }
    if (b.overdrawn()) {
      parts.add("more than it held: look and write what is left");
    }
    if (b.past(today)) {
      parts.add("past its use-by");
    }
    if (b.openTooLong(today)) {
      parts.add("open for too long");
    }
    return String.join("; ", parts);
  }

  /** What is short, in one sentence. */
  String summary(Supplies s) {
    if (s.visits() == 0) {
      return "Nothing is planned until " + DateWords.dated(s.until()) + ".";
    }
    String missing = names(s, Enough.Answer.SHORT);
    String tight = names(s, Enough.Answer.TIGHT);
    if (missing.isEmpty() && tight.isEmpty()) {
      return s.enough().stream().anyMatch(e -> e.answer() == Enough.Answer.ENOUGH)
          ? "Enough of all that is known until " + DateWords.dated(s.until()) + "."
          : "It is not known whether there is enough until " + DateWords.dated(s.until()) + ".";
    }
    return (missing.isEmpty() ? "" : "Short: " + missing + ". ")
        + (tight.isEmpty() ? "" : "Tight: " + tight + ".").strip();
  }

  private static String names(Supplies s, Enough.Answer answer) {
    return s.enough().stream()
        .filter(e -> e.answer() == answer)
        .map(e -> e.product().name())
        .collect(Collectors.joining(", "));
  }

  /** What is not in the numbers. */
  String gaps(Supplies s) {
    List<String> sentences = new ArrayList<>();
    if (s.likeLast() > 0) {
      sentences.add(
          s.likeLast()
              + " of "
              + s.visits()
              + " planned visits have no steps yet and are reckoned like the last of their care"
              + " plan.");
    }
    if (s.unknown() > 0) {
      sentences.add(
          s.unknown()
              + " of "
              + s.visits()
              + " planned visits "
              + (s.unknown() == 1 ? "does" : "do")
              + " not say yet all that "
              + (s.unknown() == 1 ? "it needs" : "they need")
              + "; what is missing is not in it.");
    }
    if (s.noBottle() > 0) {
      sentences.add(
          steps(s.noBottle())
              + " done took a product of which no bottle was open by then; nothing is taken off for"
              + " them.");
    }
    return String.join(" ", sentences);
  }

  SheetState.Table enough(Optional<Supplies> supplies) {
    return new SheetState.Table(
        supplies.map(s -> "Enough until " + DateWords.dated(s.until())).orElse("Enough"),
        List.of("Product", "Needed, ml", "Left then, ml", "Enough", "What to know", "Known by"),
        supplies.map(Supplies::enough).orElse(List.of()).stream().map(this::row).toList(),
        supplies.map(SuppliesWords::nothing).orElse("Reckoning …"));
  }

  /** Why no product is needed, as far as that is known. */
  private static String nothing(Supplies s) {
    if (s.unknown() == 0) {
      return "Nothing that is planned until then needs a product.";
    }
    return s.unknown() == s.visits()
        ? "No planned visit says yet what it needs."
        : "What the planned visits say until now needs no product.";
  }

  private List<String> row(Enough e) {
    Enough.Need need = e.need();
    return List.of(
        e.product().name(),
        need.middle() == 0
            ? "not known"
            : ml(need.middle()) + " (" + ml(need.low()) + " to " + ml(need.high()) + ")",
        e.left().map(SuppliesWords::ml).orElse("not known"),
        answer(e),
        toKnow(e),
        String.join(", ", e.origins()));
  }

  private static String answer(Enough e) {
    return switch (e.answer()) {
      case ENOUGH -> "yes";
      case TIGHT -> "perhaps: " + ml(e.missing()) + " ml more would be safe";
      case SHORT -> "no: " + ml(e.missing()) + " ml more would be safe";
      case UNKNOWN -> "not known";
    };
  }

  private static String toKnow(Enough e) {
    List<String> parts = new ArrayList<>();
    e.past().forEach(b -> parts.add(named(b) + " is past its use-by then"));
    e.openTooLong()
        .forEach(
            b ->
                parts.add(
                    named(b)
                        + " is open for too long then: it keeps until "
                        + b.keepsUntil().orElseThrow()));
    if (e.gaps() > 0) {
      parts.add(steps(e.gaps()) + " of unknown area or dilution not in it");
    }
    return String.join("; ", parts);
  }

  private static String named(BottleLeft b) {
    return b.bottle().batch().isBlank() ? "a bottle" : "batch " + b.bottle().batch();
  }

  SheetState.Table pads(Optional<Supplies> supplies) {
    return new SheetState.Table(
        "Pads",
        List.of(
            "Pad", "Uses so far", "Worn out so far", "The one in use", "Planned uses", "New ones"),
        supplies.map(Supplies::pads).orElse(List.of()).stream().map(SuppliesWords::row).toList(),
        supplies.isPresent() ? "No step names a pad." : "Reckoning …");
  }

  private static List<String> row(PadWear p) {
    return List.of(
        p.pad(),
        String.valueOf(p.uses()),
        String.valueOf(p.worn()),
        p.life() == 1 ? "used once" : p.onTheLast() + " of " + p.life() + " uses",
        String.valueOf(p.planned()),
        String.valueOf(p.toBuy()));
  }
}
