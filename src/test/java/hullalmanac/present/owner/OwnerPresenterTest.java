package hullalmanac.present.owner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.With;
import hullalmanac.core.report.BoatHistory;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.OpenItems;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.fixture.Secrets;
import hullalmanac.present.boats.BoatPage;
import hullalmanac.service.Fleet;
import hullalmanac.service.FleetService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class OwnerPresenterTest {
  private final AtomicReference<Optional<OwnerState>> shown =
      new AtomicReference<>(Optional.empty());

  private OwnerPresenter presenter(Fleet fleet) {
    OwnerPresenter presenter = new OwnerPresenter(OpenSample.service(), new InlineTaskRunner());
    presenter.onChange(shown::set);
    presenter.show(fleet);
    return presenter;
  }

  private static Fleet sample() {
    return OpenSample.fleet();
  }

  private static Boat boat(String name) {
    return sample().almanac().boats().stream()
        .filter(b -> b.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private OwnerState state(Fleet fleet, String name) {
    presenter(fleet).open(boat(name).id());
    return shown.get().orElseThrow();
  }

  private static String texts(OwnerState state) {
    List<String> texts = new ArrayList<>();
    Secrets.walk(
        state,
        (name, value) -> {
          if (!(value instanceof Record
              || value instanceof Iterable
              || value instanceof Optional)) {
            texts.add(value.toString());
          }
        });
    return String.join("\n", texts);
  }

  private static Pattern word(String text) {
    return Pattern.compile("(?<!\\w)" + Pattern.quote(text) + "(?!\\w)");
  }

  @Test
  void showsNoSecretOfAnyBoat() {
    List<Pattern> secrets =
        Secrets.of(sample().almanac()).stream().map(OwnerPresenterTest::word).toList();
    assertThat(secrets).hasSizeGreaterThan(100);
    OwnerPresenter presenter = presenter(sample());
    for (Boat boat : sample().almanac().boats()) {
      presenter.open(boat.id());
      String texts = withoutWhatIsToPay(shown.get().orElseThrow());
      assertThat(texts).contains(boat.name());
      assertThat(secrets.stream().filter(s -> s.matcher(texts).find()).map(Pattern::pattern))
          .as(boat.name())
          .isEmpty();
    }
  }

  /** The sample has few notes; here every text that can be a secret is one. */
  @Test
  void showsNoSecretWhereEveryRowHasOne() {
    Almanac poisoned = Secrets.poisoned(sample().almanac());
    assertThat(Secrets.of(poisoned)).contains(Secrets.WORD, "47474.74");
    Fleet fleet =
        new Fleet(
            poisoned,
            sample().asOf(),
            sample().coats(),
            sample().due(),
            sample().lives(),
            sample().forecaster(),
            Accounts.of(poisoned),
            OpenItems.of(poisoned, Accounts.of(poisoned), sample().asOf()),
            sample().reminders());
    OwnerPresenter presenter = presenter(fleet);
    for (Boat boat : poisoned.boats()) {
      presenter.open(boat.id());
      assertThat(texts(shown.get().orElseThrow())).as(boat.name()).doesNotContain(Secrets.WORD);
      assertThat(withoutWhatIsToPay(shown.get().orElseThrow()))
          .as(boat.name())
          .doesNotContain("47474.74", "47,474.74");
    }
  }

  /** All it says but the one thing about money that is the owner's own. */
  private static String withoutWhatIsToPay(OwnerState state) {
    return texts(With.component(state, "toPay", List.of()));
  }

  private static boolean owns(Almanac almanac, Invoice invoice) {
    return almanac.roles().stream()
        .anyMatch(
            r ->
                invoice.boat().equals(Optional.of(r.boat()))
                    && r.party().equals(invoice.party())
                    && r.kind() == RoleKind.OWNS
                    && r.holdsOn(sample().asOf()));
  }

  @Test
  void saysWhatIsStillToPayToHerOwnersOnly() {
    Almanac almanac = sample().almanac();
    OpenItems.Item item =
        OpenItems.of(almanac, Accounts.of(almanac), sample().asOf()).accounts().stream()
            .flatMap(a -> a.items().stream())
            .filter(i -> i.open().isPositive() && owns(almanac, i.invoice()))
            .findFirst()
            .orElseThrow();
    Boat hers =
        almanac.boats().stream()
            .filter(b -> item.invoice().boat().equals(Optional.of(b.id())))
            .findFirst()
            .orElseThrow();
    String number = item.invoice().issue().orElseThrow().number();
    assertThat(state(sample(), hers.name()).toPay())
        .anyMatch(said -> said.startsWith(item.open().words()) && said.contains(number));
    for (Boat other : almanac.boats()) {
      if (!other.equals(hers)) {
        assertThat(state(sample(), other.name()).toPay().toString()).doesNotContain(number);
      }
    }
    List<Row> sold =
        almanac.roles().stream()
            .filter(r -> r.boat().equals(hers.id()) && r.kind() == RoleKind.OWNS)
            .map(r -> (Row) With.component(r, "until", Optional.of(sample().asOf().minusDays(1))))
            .toList();
    assertThat(state(changed(Edit.put(sold)), hers.name()).toPay())
        .as("who bought her does not read what was owed for her before")
        .isEmpty();
  }

  @Test
  void carriesNoRowOfTheRecord() {
    OwnerState state = state(sample(), "Black Guillemot");
    List<Object> carried = new ArrayList<>();
    Secrets.walk(state, (name, value) -> carried.add(value));
    assertThat(carried).hasSizeGreaterThan(100);
    assertThat(carried).noneMatch(v -> v instanceof Row || v instanceof Money || v instanceof Id);
  }

  @Test
  void saysWhatComesNextAndWhyInTheWordsOfTheForecast() {
    OwnerState state = state(sample(), "Black Guillemot");
    assertThat(state.facts())
        .isEqualTo("27 ft 9 in (8.46 m) · motor cruiser · lies at Fallow Creek");
    assertThat(state.next().caution()).isEqualTo("A forecast, not a guarantee.");
    assertThat(state.next().heading()).contains(": ");
    assertThat(state.next().sentence()).contains("in 10");
    assertThat(state.next().reasons().stream().map(BoatPage.ReasonCard::title))
        .containsExactly("The label", "Such coats", "Where it lies", "What was seen");
    assertThat(texts(state)).doesNotContain("yours", "of your");
    assertThat(state.timeline().lanes()).isNotEmpty();
  }

  @Test
  void saysWhatWasDoneNewestFirst() {
    List<BoatHistory.Visited> history = state(sample(), "Black Guillemot").history();
    assertThat(history.stream().map(BoatHistory.Visited::day))
        .startsWith("20 April 2026", "30 October 2025", "20 and 21 October 2025")
        .endsWith("19 and 20 April 2023");
    BoatHistory.Visited autumn = history.get(2);
    assertThat(autumn.done())
        .containsExactly(
            "Washed, decontaminated, polished, protected with polymer sealant B: topsides, transom",
            "Washed, decontaminated, polished, protected with cleaner wax F: waterline band,"
                + " foredeck, cabin sides, hardtop",
            "Washed: the rest of the boat");
    assertThat(autumn.seen())
        .containsExactly("Before: water lay flat on topsides, transom, foredeck");
    assertThat(history.get(1).done()).containsExactly("Washed: the whole boat");
    assertThat(history.get(1).seen())
        .containsExactly(
            "Water beaded on waterline band; gloss 87 on topsides (port), 91 on topsides (starboard)");
  }

  @Test
  void showsNoVisitThatWasNotDone() {
    Fleet fleet = sample();
    OwnerPresenter presenter = presenter(fleet);
    int visits = 0;
    for (Boat boat : fleet.almanac().boats()) {
      presenter.open(boat.id());
      visits += shown.get().orElseThrow().history().size();
    }
    assertThat(visits)
        .isEqualTo(
            (int)
                fleet.almanac().visits().stream()
                    .filter(v -> v.status() == hullalmanac.core.record.VisitStatus.DONE)
                    .count())
        .isLessThan(fleet.almanac().visits().size());
  }

  @Test
  void pairsPhotosOfTheSameSurfaceAndVisit() {
    OwnerState state = state(sample(), "Black Guillemot");
    List<Photo> hers = photos("Black Guillemot");
    assertThat(state.pairs())
        .containsExactly(
            new BoatHistory.Pair(
                "Topsides (port)",
                "21 and 22 April 2025",
                file(hers, Moment.BEFORE),
                file(hers, Moment.AFTER)));
    assertThat(state.morePairs()).isEmpty();
  }

  @Test
  void leavesOutDamageAndWhatCannotBePreviewedAndWhatHasNoOther() {
    assertThat(state(with(Moment.DAMAGE, "png"), "Black Guillemot").pairs()).isEmpty();
    assertThat(state(with(Moment.AFTER, "heic"), "Black Guillemot").pairs()).isEmpty();
    assertThat(state(with(Moment.BEFORE, "png"), "Black Guillemot").pairs()).isEmpty();
    assertThat(state(with(Moment.AFTER, "png"), "Black Guillemot").pairs()).hasSize(1);
  }

  /** The sample with Black Guillemot's photo after the work changed. */
  private static Fleet with(Moment moment, String ending) {
    Photo after =
        photos("Black Guillemot").stream()
            .filter(p -> p.moment() == Moment.AFTER)
            .findFirst()
            .orElseThrow();
    return changed(Edit.put(photo(after, after.id(), moment, "ab".repeat(32) + "." + ending)));
  }

  @Test
  void showsTheNewestPairsAndSaysHowManyThereAre() {
    List<Photo> hers = photos("Black Guillemot");
    List<Photo> more = new ArrayList<>();
    for (Photo p : hers) {
      for (int i = 1; i <= 9; i++) {
        String file = String.format("%064x.png", 100 * i + more.size());
        more.add(photo(p, new Id<>(900 + more.size()), p.moment(), file));
      }
    }
    OwnerState state = state(changed(Edit.put(more)), "Black Guillemot");
    assertThat(state.pairs()).hasSize(8);
    assertThat(state.morePairs()).isEqualTo("The newest 8 of 10 pairs");
  }

  private static Fleet changed(Edit edit) {
    Fleet s = sample();
    return s.beside(s.almanac().with(edit));
  }

  private static Photo photo(Photo p, Id<Photo> id, Moment moment, String file) {
    return new Photo(
        id, "p-" + id.value(), p.boat(), p.surface(), p.visit(), p.takenAt(), moment, file, "");
  }

  private static List<Photo> photos(String boat) {
    return sample().almanac().photos().stream()
        .filter(p -> p.boat().equals(boat(boat).id()))
        .collect(Collectors.toList());
  }

  private static String file(List<Photo> photos, Moment moment) {
    return photos.stream().filter(p -> p.moment() == moment).findFirst().orElseThrow().file();
  }

  @Test
  void showsNothingUntilOpenedAndNothingWhenLeft() {
    OwnerPresenter presenter = presenter(sample());
    assertThat(shown.get()).isEmpty();
    presenter.open(boat("Siskin").id());
    assertThat(shown.get().orElseThrow().name()).isEqualTo("Siskin");
    presenter.leave();
    assertThat(shown.get()).isEmpty();
  }

  @Test
  void leavesWhenTheBoatIsTakenOutOfTheRecord() {
    OwnerPresenter presenter = presenter(sample());
    presenter.open(boat("Siskin").id());
    presenter.show(changed(Edit.remove(List.of(boat("Merganser")))));
    assertThat(shown.get()).isPresent();
    presenter.show(changed(Edit.remove(List.of(boat("Siskin")))));
    assertThat(shown.get()).isEmpty();
  }

  @Test
  void fetchesAPhotoSmallAndNothingForOneThatIsNotThere() {
    OwnerPresenter presenter = presenter(sample());
    AtomicReference<Optional<Pixels>> picture = new AtomicReference<>();
    presenter.picture(photos("Black Guillemot").get(0).file(), 320, picture::set);
    assertThat(picture.get().orElseThrow().width()).isEqualTo(320);
    assertThat(picture.get().orElseThrow().height()).isEqualTo(210);
    presenter.picture("ab".repeat(32) + ".png", 320, picture::set);
    assertThat(picture.get()).isEmpty();
  }

  @Test
  void hidesNoMistakeOfTheProgramBehindAMissingPhoto() {
    FleetService broken =
        new FleetService() {
          @Override
          public Almanac read() {
            throw new RecordException(RecordException.Kind.OTHER, "not read here");
          }

          @Override
          public LocalDate today() {
            return LocalDate.of(2026, 5, 1);
          }

          @Override
          public String status() {
            return "";
          }

          @Override
          public Optional<Pixels> picture(String file, int side) {
            throw new IllegalStateException("a mistake");
          }
        };
    OwnerPresenter presenter = new OwnerPresenter(broken, new InlineTaskRunner());
    assertThatThrownBy(() -> presenter.picture("x.png", 320, p -> {})).hasMessage("a mistake");
  }
}
