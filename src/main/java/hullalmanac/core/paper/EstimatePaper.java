package hullalmanac.core.paper;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.SurfaceNames;
import hullalmanac.core.takings.Answering;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** An estimate: what can be expected, the options with their prices, until when it holds. */
public final class EstimatePaper {
  private final Almanac almanac;
  private final Estimate estimate;
  private final LocalDate today;
  private final Currency currency;
  private final List<Block> blocks = new ArrayList<>();

  private EstimatePaper(Almanac almanac, Estimate estimate, LocalDate today) {
    this.almanac = almanac;
    this.estimate = estimate;
    this.today = today;
    currency = almanac.business().currency();
  }

  /**
   * Puts an estimate on paper.
   *
   * @param today the day on which it is printed, for whether it still holds
   */
  public static Paper of(Almanac almanac, Estimate estimate, LocalDate today) {
    return new EstimatePaper(almanac, estimate, today).paper();
  }

  private Paper paper() {
    Boat boat =
        almanac.boats().stream()
            .filter(b -> b.id().equals(estimate.boat()))
            .findFirst()
            .orElseThrow();
    recipient();
    lead().ifPresent(text -> blocks.add(new Block.Lead(text)));
    blocks.add(
        new Block.Facts(
            List.of(
                new Block.Fact("Date", DateWords.dated(estimate.day())),
                new Block.Fact("Holds until", DateWords.dated(estimate.validUntil())),
                new Block.Fact("Boat", boat.name() + length(boat)))));
    expectations();
    if (estimate.options().isEmpty()) {
      blocks.add(new Block.Words("No option is written yet."));
    }
    estimate.options().forEach(o -> blocks.add(new Block.Kept(option(o))));
    signing().ifPresent(blocks::add);
    blocks.add(
        new Block.Note(
            "What a surface will look like is what can be expected, not a promise: what lies under"
                + " stains and old protection shows only in the work. Structural, electrical and"
                + " gelcoat repair beyond polishing is for qualified yards."));
    return Paper.of(almanac.business(), "Estimate", "For " + boat.name(), blocks);
  }

  /** Room to accept it while it can be; later, how it was. */
  private Optional<Block> signing() {
    if (estimate.openOn(today)) {
      String which = estimate.options().size() > 1 ? "Which of them" : "For what";
      return Optional.of(
          new Block.Kept(
              List.of(
                  new Block.Heading(2, "To accept it"),
                  new Block.Blanks(List.of(which, "Name and day", "Signature")))));
    }
    return estimate
        .answer()
        .flatMap(
            a ->
                a.signature()
                    .map(
                        s ->
                            new Block.Signed(
                                s,
                                (a.signedBy().isBlank() ? "Signed" : a.signedBy())
                                    + ", "
                                    + DateWords.dated(a.day()))));
  }

  private static String length(Boat boat) {
    return boat.loa().map(l -> ", " + l.feetAndInches() + " (" + l.metresText() + ")").orElse("");
  }

  private void recipient() {
    Optional<Party> party =
        almanac.parties().stream()
            .filter(p -> estimate.party().equals(Optional.of(p.id())))
            .findFirst();
    party.ifPresent(
        p -> {
          List<String> lines = new ArrayList<>();
          lines.add(p.name());
          p.address().lines().filter(l -> !l.isBlank()).forEach(lines::add);
          blocks.add(new Block.Recipient(lines));
        });
  }

  private Optional<String> lead() {
    return switch (estimate.state()) {
      case DRAFT -> Optional.of("Draft: this is not an offer yet.");
      case OFFERED ->
          today.isAfter(estimate.validUntil())
              ? Optional.of("This held until " + DateWords.dated(estimate.validUntil()) + ".")
              : Optional.empty();
      case ACCEPTED, DECLINED ->
          estimate
              .answer()
              .map(
                  a ->
                      Texts.capital(estimate.state().words())
                          + " on "
                          + DateWords.dated(a.day())
                          + (a.option().isBlank() ? "" : ": " + a.option())
                          + ".");
    };
  }

  private void expectations() {
    if (estimate.expectations().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "What you can expect"));
    blocks.add(
        new Block.Table(
            "what becomes of marks and flaws",
            List.of(Block.Column.words("What becomes of it", 28), Block.Column.words("Of what")),
            estimate.expectations().stream()
                .map(x -> List.of(Texts.capital(x.result().words()), x.words()))
                .toList(),
            List.of()));
  }

  private List<Block> option(Estimate.Option option) {
    List<Block> part = new ArrayList<>();
    part.add(new Block.Heading(2, option.name()));
    String steps = option.steps().stream().map(Coded::words).collect(Collectors.joining(", "));
    List<Surface> surfaces =
        almanac.surfaces().stream().filter(s -> option.surfaces().contains(s.id())).toList();
    String where = surfaces.isEmpty() ? "the whole boat" : SurfaceNames.of(surfaces);
    part.add(
        new Block.Words(
            steps.isEmpty()
                ? Texts.capital(where) + "."
                : Texts.capital(steps) + ": " + where + "."));
    Bill bill = Bill.of(option, estimate.terms(), currency);
    if (bill.items().isEmpty()) {
      part.add(new Block.Words("No price is written yet."));
      return part;
    }
    Money deposit = Answering.deposit(estimate, option, currency);
    part.add(
        BillTable.of(
            "lines of " + option.name() + ", and what they come to",
            bill,
            estimate.terms().inclusive(),
            deposit.isPositive()
                ? List.of(BillTable.Sum.of("Of it beforehand, as a deposit", deposit))
                : List.of()));
    return part;
  }
}
