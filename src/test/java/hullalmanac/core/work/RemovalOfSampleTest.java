package hullalmanac.core.work;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.ListReading;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.sample.SampleRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every kind of row taken out of the sample, each from the whole of it. */
@Tag("slow")
class RemovalOfSampleTest {
  private static final int MOST_OF_A_KIND = 60;

  /** Which rows go with which, as people would say it: a row, and what it takes along. */
  private static final Map<Class<?>, Set<Class<?>>> GOES_WITH =
      Map.of(
          Party.class, Set.of(Role.class, Invoice.class),
          Boat.class,
              Set.of(
                  Role.class,
                  Surface.class,
                  Berth.class,
                  CarePlan.class,
                  Visit.class,
                  Photo.class,
                  Reminder.class,
                  Estimate.class,
                  Invoice.class),
          Surface.class, Set.of(Coat.class, Finding.class, Step.class),
          CarePlan.class, Set.of(Visit.class),
          Product.class, Set.of(Bottle.class),
          Visit.class, Set.of(Step.class, Coat.class, Finding.class, Photo.class),
          Coat.class, Set.of(Coat.class, Duty.class));

  private static Almanac sample;
  private static final Map<References.To, List<Row>> REFERRING = new HashMap<>();

  @BeforeAll
  static void make() {
    // The invented business wrote everything down by hand and brought no list in.
    ListReading reading =
        new ListReading(
            new Id<>(1),
            "owners",
            "owners",
            List.of(new ListReading.Column("boat", ListField.BOAT)));
    sample = SampleRecord.make().almanac().with(Edit.put(reading));
    sample.rows().forEach(r -> REFERRING.put(to(r), new ArrayList<>()));
    for (Row row : sample.rows()) {
      References.of(row).forEach(to -> REFERRING.get(to).add(row));
    }
  }

  private static References.To to(Row row) {
    return new References.To(row.getClass(), row.id());
  }

  private static List<Row> some(Kind kind) {
    List<Row> all = sample.rows().stream().filter(r -> Kind.of(r) == kind).toList();
    int apart = Math.max(1, all.size() / MOST_OF_A_KIND);
    return IntStream.range(0, all.size()).filter(i -> i % apart == 0).mapToObj(all::get).toList();
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "BUSINESS")
  void leavesARecordThatAgreesWithItself(Kind kind) {
    assertThat(some(kind)).isNotEmpty();
    int done = 0;
    for (Row row : some(kind)) {
      Change change = Removal.of(sample, row);
      if (change instanceof Change.Refused) {
        if (!heldFast(row)) {
          assertThat(row)
              .isInstanceOfAny(Harbour.class, Product.class, Bottle.class)
              .matches(r -> !REFERRING.get(to(r)).isEmpty());
        }
      } else {
        holds(row, Slip.ready(change));
        done++;
      }
    }
    boolean mayAllBeInUse = kind == Kind.HARBOUR || kind == Kind.PRODUCT;
    assertThat(done).isGreaterThan(mayAllBeInUse ? -1 : 0);
  }

  /** Whether a row was issued, or is spoken of by what was issued or paid. */
  private static boolean heldFast(Row row) {
    Stream<Row> referring = REFERRING.get(to(row)).stream();
    if (row instanceof Boat) {
      referring =
          Stream.concat(
              referring,
              sample.visits().stream()
                  .filter(v -> v.boat().equals(row.id()))
                  .flatMap(v -> REFERRING.get(to(v)).stream()));
    }
    boolean may = row instanceof Boat || row instanceof Party || row instanceof Visit;
    return (row instanceof Invoice i && i.issued())
        || (may
            && referring.anyMatch(
                r -> r instanceof Payment || (r instanceof Invoice i && i.issued())));
  }

  private static void holds(Row row, Edit edit) {
    Set<References.To> gone = edit.gone().stream().map(r -> to(r)).collect(Collectors.toSet());
    Map<References.To, Row> put = edit.put().stream().collect(Collectors.toMap(r -> to(r), r -> r));
    assertThat(gone).contains(to(row)).noneMatch(put::containsKey);
    for (Row away : edit.gone()) {
      assertThat(REFERRING.get(to(away)))
          .as("rows that refer to %s", away.key())
          .allMatch(r -> gone.contains(to(r)) || put.containsKey(to(r)));
      assertThat(away.equals(row) || goesWith(away, edit.gone())).as(away.key()).isTrue();
    }
    for (Row changed : edit.put()) {
      assertThat(REFERRING).containsKey(to(changed));
      assertThat(References.of(changed))
          .allMatch(r -> REFERRING.containsKey(r) && !gone.contains(r));
      assertThat(referredToGone(changed, gone) || byVisit(changed, edit.gone()))
          .as(changed.key())
          .isTrue();
    }
    Almanac additions = Almanac.empty(sample.business()).with(Edit.put(edit.put()));
    assertThat(RecordRules.problems(sample.with(Edit.remove(edit.gone())), additions)).isEmpty();
  }

  private static boolean goesWith(Row away, List<Row> gone) {
    Set<References.To> refers = References.of(away);
    return gone.stream()
        .filter(r -> refers.contains(to(r)))
        .anyMatch(r -> GOES_WITH.getOrDefault(r.getClass(), Set.of()).contains(away.getClass()));
  }

  private static boolean referredToGone(Row changed, Set<References.To> gone) {
    return REFERRING.entrySet().stream()
        .filter(e -> gone.contains(e.getKey()))
        .flatMap(e -> e.getValue().stream())
        .anyMatch(r -> to(r).equals(to(changed)));
  }

  /** Coats that come back into service, and a care plan that learns of a skip. */
  private static boolean byVisit(Row changed, List<Row> gone) {
    Stream<Visit> visits = gone.stream().filter(Visit.class::isInstance).map(Visit.class::cast);
    boolean coat = changed instanceof Coat;
    return coat
        ? visits.findAny().isPresent() || gone.get(gone.size() - 1) instanceof Finding
        : changed instanceof CarePlan && visits.anyMatch(v -> v.plan().isPresent());
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"BOAT", "PARTY", "VISIT", "SURFACE"})
  void leavesNothingThatRefersToWhatIsGone(Kind kind) {
    List<Row> free = some(kind).stream().filter(r -> !heldFast(r)).toList();
    Row row = free.get(free.size() / 2);
    Almanac after = sample.with(Slip.ready(Removal.of(sample, row)));
    assertThat(References.missing(after)).isEmpty();
    Set<Row> before = new HashSet<>(sample.rows());
    assertThat(before).hasSizeGreaterThan(after.rows().size());
  }
}
