package hullalmanac.service;

import hullalmanac.core.card.JobCard;
import hullalmanac.core.life.ProductLives;
import hullalmanac.core.paper.CardPaper;
import hullalmanac.core.paper.CarePaper;
import hullalmanac.core.paper.ConditionPaper;
import hullalmanac.core.paper.DuePaper;
import hullalmanac.core.paper.EstimatePaper;
import hullalmanac.core.paper.HistoryPaper;
import hullalmanac.core.paper.InvoicePaper;
import hullalmanac.core.paper.LivesPaper;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.paper.YearPaper;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.takings.Accounts;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The papers of a record, asked for by what people call things. */
public final class Papers {
  private final Supplier<Fleet> forecasts;
  private final Almanac almanac;
  private final LocalDate day;

  /** Reads a record as of the day of its forecasts. */
  public Papers(Fleet fleet) {
    this.forecasts = () -> fleet;
    almanac = fleet.almanac();
    day = fleet.asOf();
  }

  /** Reads a record as of a day; it is forecast only for papers on which forecasts stand. */
  public Papers(Almanac almanac, LocalDate day) {
    this.forecasts = () -> Fleet.dueOf(almanac, day);
    this.almanac = almanac;
    this.day = day;
  }

  /** Kinds of paper. */
  public enum Sort implements Coded {
    HISTORY("history", true),
    CONDITION("condition", true),
    CARE("care", true),
    ESTIMATE("estimate", true),
    INVOICE("invoice", false),
    CARD("card", true),
    DUE("due", false),
    LIVES("lives", false),
    YEAR("year", false);

    private final String code;
    private final boolean ofBoat;

    Sort(String code, boolean ofBoat) {
      this.code = code;
      this.ofBoat = ofBoat;
    }

    @Override
    public String code() {
      return code;
    }

    /** Whether it is of one boat, which has to be named. */
    public boolean ofBoat() {
      return ofBoat;
    }
  }

  /**
   * What a paper is asked for.
   *
   * @param boat name, own id or hull number of a boat
   * @param visit the day of a visit; absent: the newest that was done, of a job card the next
   * @param number of an invoice or a credit
   * @param year of takings; absent: that of the day
   */
  public record Asked(
      Sort sort,
      Optional<String> boat,
      Optional<LocalDate> visit,
      Optional<String> number,
      Optional<Integer> year) {
    /** A paper of the whole record, as of the day. */
    public static Asked ofAll(Sort sort) {
      return new Asked(
          sort, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The takings of a year. */
    public static Asked ofYear(int year) {
      return new Asked(
          Sort.YEAR, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(year));
    }
  }

  /** What came of it. */
  public sealed interface Outcome {}

  /** The paper. */
  public record Ready(Paper paper) implements Outcome {}

  /** Why there is none, a sentence. */
  public record Refused(String sentence) implements Outcome {}

  /** Thrown inside only; turned into an outcome. */
  private static final class NoSuch extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoSuch(String sentence) {
      super(sentence, null, false, false);
    }
  }

  /** Makes a paper. */
  public Outcome of(Asked asked) {
    try {
      return new Ready(paper(asked));
    } catch (NoSuch e) {
      return new Refused(e.getMessage());
    }
  }

  private Paper paper(Asked asked) {
    return switch (asked.sort()) {
      case HISTORY -> history(boat(asked));
      case CONDITION -> ConditionPaper.of(almanac, day, done(asked, v -> true));
      case CARE -> care(cared(asked));
      case ESTIMATE -> EstimatePaper.of(almanac, estimate(boat(asked)), day);
      case INVOICE -> InvoicePaper.of(almanac, Accounts.of(almanac), invoice(asked));
      case CARD -> CardPaper.of(almanac, card(asked));
      case DUE -> DuePaper.of(almanac, forecasts.get().due(), day);
      case LIVES -> LivesPaper.of(almanac, lives(), day);
      case YEAR ->
          YearPaper.of(almanac, Accounts.of(almanac), asked.year().orElse(day.getYear()), day);
    };
  }

  private Paper history(Boat boat) {
    return HistoryPaper.of(almanac, forecasts.get().coats(), day, boat.id());
  }

  private Paper care(Visit visit) {
    return CarePaper.of(almanac, forecasts.get().coats(), day, visit);
  }

  private List<ProductLives> lives() {
    Fleet fleet = forecasts.get();
    return fleet.lives().isEmpty() ? fleet.withLives().lives() : fleet.lives();
  }

  private Boat boat(Asked asked) {
    String wanted =
        asked
            .boat()
            .map(String::strip)
            .filter(b -> !b.isEmpty())
            .orElseThrow(
                () -> new NoSuch("Say of which boat, by her name, her id or her hull number."));
    Optional<Boat> byId = almanac.boats().stream().filter(b -> b.key().equals(wanted)).findFirst();
    if (byId.isPresent()) {
      return byId.get();
    }
    List<Boat> found =
        almanac.boats().stream()
            .filter(
                b ->
                    b.name().equalsIgnoreCase(wanted)
                        || (!b.hullNumber().isBlank() && b.hullNumber().equalsIgnoreCase(wanted)))
            .sorted(Comparator.comparing(Boat::key))
            .toList();
    if (found.isEmpty()) {
      throw new NoSuch("No boat is called \"" + wanted + "\". Write her name, id or hull number.");
    }
    if (found.size() > 1) {
      throw new NoSuch(
          found.size()
              + " boats are called \""
              + wanted
              + "\". Say which by her id: "
              + found.stream().map(Boat::key).collect(Collectors.joining(", "))
              + ".");
    }
    return found.get(0);
  }

  private Visit done(Asked asked, Predicate<Visit> fit) {
    Boat boat = boat(asked);
    List<Visit> done = visits(boat, asked.visit(), VisitStatus.DONE);
    return done.stream()
        .filter(fit)
        .findFirst()
        .or(() -> done.stream().findFirst())
        .orElseThrow(
            () ->
                new NoSuch(
                    boat.name()
                        + asked
                            .visit()
                            .map(d -> " was not worked on in a visit of " + d)
                            .orElse(" has no visit that was done")
                        + "."));
  }

  /** Of a care card the newest visit in which a coat was laid. */
  private Visit cared(Asked asked) {
    Set<Id<Visit>> laying =
        almanac.coats().stream()
            .map(Coat::visit)
            .flatMap(Optional::stream)
            .collect(Collectors.toSet());
    return done(asked, v -> laying.contains(v.id()));
  }

  /** The newest first. */
  private List<Visit> visits(Boat boat, Optional<LocalDate> on, VisitStatus status) {
    return almanac.visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && v.status() == status)
        .filter(v -> on.map(v.day()::equals).orElse(true))
        .sorted(Comparator.comparing(Visit::day).reversed().thenComparing(Visit::key))
        .toList();
  }

  private JobCard card(Asked asked) {
    Boat boat = boat(asked);
    Stream<Visit> of =
        asked.visit().isPresent()
            ? almanac.visits().stream()
                .filter(v -> v.boat().equals(boat.id()) && v.day().equals(asked.visit().get()))
            : JobCard.next(almanac, boat.id(), day).stream();
    return of.findFirst()
        .flatMap(v -> JobCard.of(almanac, v.id()))
        .orElseThrow(
            () ->
                new NoSuch(
                    boat.name()
                        + asked
                            .visit()
                            .map(d -> " has no visit on " + d)
                            .orElse(" has no visit that is planned")
                        + "."));
  }

  private Estimate estimate(Boat boat) {
    return almanac.books().estimates().stream()
        .filter(e -> e.boat().equals(boat.id()))
        .max(Comparator.comparing(Estimate::day).thenComparing(Estimate::key))
        .orElseThrow(() -> new NoSuch("No estimate was written for " + boat.name() + "."));
  }

  private Invoice invoice(Asked asked) {
    String wanted =
        asked
            .number()
            .map(String::strip)
            .filter(n -> !n.isEmpty())
            .orElseThrow(() -> new NoSuch("Say which invoice or credit by its number."));
    return almanac.books().invoices().stream()
        .filter(i -> i.issue().map(s -> s.number().equalsIgnoreCase(wanted)).orElse(false))
        .findFirst()
        .orElseThrow(() -> new NoSuch("No invoice or credit has the number \"" + wanted + "\"."));
  }
}
