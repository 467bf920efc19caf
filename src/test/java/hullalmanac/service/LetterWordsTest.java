package hullalmanac.service;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.paper.Block;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.DutyKind;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.report.Letters;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What letters and cards say of coats, makers' duties and care plans. */
class LetterWordsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  private final Made made = new Made(48.4);
  private final Surface topsides = made.topsides();

  LetterWordsTest() {
    made.open(DAY.minusYears(2));
  }

  private LetterWords words(Almanac almanac) {
    return LetterWords.of(Fleet.dueOf(almanac, DAY), made.boat());
  }

  private static List<Block.Fact> lines(LetterWords words) {
    return words.card(Optional.empty(), "text").blocks().stream()
        .filter(Block.Facts.class::isInstance)
        .flatMap(b -> ((Block.Facts) b).facts().stream())
        .toList();
  }

  private Coat coat(LocalDate laid) {
    return made.coat(topsides, made.product(ProductKind.POLYMER_SEALANT, Optional.of(12.0)), laid);
  }

  private static Duty duty(Coat coat, LocalDate by) {
    return new Duty(new Id<>(91), "d", coat.id(), DutyKind.INSPECTION, by, Optional.empty(), "");
  }

  private static CarePlan plan(Boat boat, LocalDate from) {
    return new CarePlan(
        new Id<>(92),
        "wash",
        boat.id(),
        "wash down",
        4,
        List.of(Month.MAY, Month.JUNE),
        Optional.empty(),
        from,
        Optional.empty(),
        List.of());
  }

  @Test
  void everyFieldThatALetterMayHoldHasAValue() {
    coat(DAY.minusDays(200));
    assertThat(words(made.almanac()).fields("Nell").keySet())
        .containsExactlyInAnyOrderElementsOf(
            Letters.FIELDS.stream().map(Letters.Field::name).toList());
  }

  @Test
  void aCoatADutyAndACarePlanEachSayTheirOwnTimeAndTheFirstLeads() {
    Coat coat = coat(DAY.minusDays(300));
    Almanac almanac =
        made.almanac()
            .with(Edit.put(duty(coat, DAY.minusDays(3)), plan(made.boat(), DAY.plusDays(9))));
    LetterWords words = words(almanac);
    assertThat(words.fields("Nell"))
        .containsEntry("surfaces", "Maker’s inspection, topsides and wash down")
        .containsEntry("when", "the first due since 28 April");
    assertThat(lines(words))
        .contains(
            new Block.Fact("Maker’s inspection", "due since 28 April"),
            new Block.Fact("Wash down", "from 10 May"))
        .anyMatch(f -> f.name().equals("Topsides"));
  }

  @Test
  void aDutyAloneSaysItsFixedDateAndNoForecast() {
    Coat coat = coat(DAY.minusDays(10));
    LetterWords words = words(made.almanac().with(Edit.put(duty(coat, DAY.plusDays(13)))));
    assertThat(words.fields("Nell")).containsEntry("when", "by 14 May");
    assertThat(words.card(Optional.empty(), "text").blocks())
        .noneMatch(Block.Note.class::isInstance);
  }

  @Test
  void whereNothingIsToBeToldYetTheCoatThatComesFirstIsSaid() {
    coat(DAY.minusDays(10));
    LetterWords words = words(made.almanac());
    assertThat(words.anything()).isTrue();
    assertThat(words.fields("Nell")).containsEntry("surfaces", "Topsides");
    assertThat(words.fields("Nell").get("when")).startsWith("best in ");
  }

  @Test
  void nothingIsSaidOfABoatOfWhichNothingFallsDueAndNobodyIsGreetedAsHerOwner() {
    LetterWords words = words(made.almanac());
    assertThat(words.anything()).isFalse();
    assertThat(words.fields(""))
        .containsEntry("name", "owner of Arctic Tern")
        .containsEntry("surfaces", "")
        .containsEntry("when", "");
    Papers.Outcome card =
        new Papers(made.almanac(), DAY)
            .of(
                new Papers.Asked(
                    Papers.Sort.REMINDER,
                    Optional.of("tern"),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
    assertThat(card)
        .isEqualTo(
            new Papers.Refused("Nothing falls due of Arctic Tern that somebody could be told."));
  }
}
