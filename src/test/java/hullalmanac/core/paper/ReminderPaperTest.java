package hullalmanac.core.paper;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.With;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReminderPaperTest {
  private static final Party NELL =
      new Party(
          new hullalmanac.core.record.Id<>(5),
          "nell",
          PartyKind.PERSON,
          "Nell Farrow",
          "+1 555 0199",
          "nell@example.org",
          "Gull Row 2\n\n98221 Quillhaven",
          "",
          Optional.empty(),
          "never on Mondays");
  private static final ReminderPaper.Due DUE =
      new ReminderPaper.Due(List.of(new Block.Fact("Topsides, transom", "best by 14 May")), true);

  private static Paper card(String letterhead, Optional<Party> to, ReminderPaper.Due due) {
    Business business =
        With.component(
            Business.unnamed(),
            "letterhead",
            new Business.Letterhead(letterhead, "TX 998 877 665", ""));
    return ReminderPaper.of(business, new Made(48.4).boat(), to, due, "Dear Nell,\nshall I come?");
  }

  private static List<Block> blocks(Paper paper) {
    return paper.blocks().stream()
        .flatMap(
            b -> b instanceof Block.Kept k ? k.blocks().stream() : java.util.stream.Stream.of(b))
        .toList();
  }

  @Test
  void aCardSaysToWhomOfWhatByWhenAndInTheWordsOfTheLetter() {
    Paper paper = card("Boatshed Lane 3, Quillhaven", Optional.of(NELL), DUE);
    assertThat(paper.name()).isEqualTo("Arctic Tern: A reminder");
    assertThat(paper.printedOn()).isEqualTo("A6");
    assertThat(With.component(paper, "size", Business.Paper.LETTER).printedOn())
        .isEqualTo("4 × 6 in");
    assertThat(blocks(paper))
        .containsExactly(
            new Block.Recipient(List.of("Nell Farrow", "Gull Row 2", "98221 Quillhaven")),
            new Block.Facts(DUE.lines()),
            new Block.Note("A forecast, not a guarantee."),
            new Block.Words("Dear Nell,\nshall I come?"));
    assertThat(paper.toString()).doesNotContain("Mondays", "nell@example.org", "0199");
  }

  @Test
  void wherePhoneAndMailStandInTheLetterheadTheCardSaysHowToAnswer() {
    String letterhead =
        "Boatshed Lane 3\nQuillhaven 98221-1234\nLicence 123456789\n+1 (555) 010-0177\n"
            + "Phone: 555 0178\n0155 501 79\n tide@example.org \nTel. +44 1632 960961";
    assertThat(blocks(card(letterhead, Optional.empty(), DUE)))
        .last()
        .isEqualTo(
            new Block.Facts(
                List.of(
                    new Block.Fact(
                        "To answer",
                        "+1 (555) 010-0177 · Phone: 555 0178 · 0155 501 79 · tide@example.org ·"
                            + " Tel. +44 1632 960961"))));
  }

  @Test
  void aFixedDateIsNoForecastAndACardToNobodyHasNoAddress() {
    ReminderPaper.Due duty =
        new ReminderPaper.Due(List.of(new Block.Fact("Maker’s inspection", "by 14 May")), false);
    assertThat(blocks(card("", Optional.empty(), duty)))
        .containsExactly(
            new Block.Facts(duty.lines()), new Block.Words("Dear Nell,\nshall I come?"));
  }
}
