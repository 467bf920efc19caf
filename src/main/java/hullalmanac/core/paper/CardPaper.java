package hullalmanac.core.paper;

import hullalmanac.core.card.JobCard;
import hullalmanac.core.card.StepWords;
import hullalmanac.core.card.Stop;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.Caution;
import hullalmanac.core.report.DateWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A job card to fill in with a pencil, in the order of the card on screen. */
public final class CardPaper {
  private CardPaper() {}

  /** Puts a card on paper, with a line on which to write when one is back. */
  public static Paper of(Almanac almanac, JobCard card) {
    return of(almanac, card, "");
  }

  /**
   * Puts a card on paper.
   *
   * @param back when one is expected back, in words; blank where nobody said
   */
  public static Paper of(Almanac almanac, JobCard card, String back) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(new Block.Fact("Day", DateWords.full(card.visit().day())));
    if (!card.place().isBlank()) {
      facts.add(new Block.Fact("Where", card.place()));
    }
    facts.add(new Block.Fact("Runoff", card.runoff().orElse(StepWords.NO_RUNOFF)));
    text(facts, "Expected back", back);
    blocks.add(new Block.Facts(facts));
    blocks.add(
        new Block.Blanks(
            List.of(back.isBlank() ? "Expected back, and who knows of it" : "Who knows of it")));
    if (card.steps().isEmpty()) {
      blocks.add(new Block.Words("No step is planned yet."));
    }
    for (int i = 0; i < card.steps().size(); i++) {
      blocks.add(new Block.Kept(step(i + 1, card.steps().get(i))));
    }
    list(blocks, "See to", card.checks());
    list(blocks, "Bring", card.tools());
    blocks.add(new Block.Heading(2, "Notes"));
    blocks.add(new Block.Blanks(List.of("Seen", "Left, and why", "Told the owner")));
    blocks.add(new Block.Note(Stop.STANDING));
    return Paper.of(almanac.business(), "Job card", card.boat().name(), blocks);
  }

  private static void list(List<Block> blocks, String heading, List<String> texts) {
    if (!texts.isEmpty()) {
      blocks.add(new Block.Heading(2, heading));
      blocks.add(new Block.Ticks(texts));
    }
  }

  private static List<Block> step(int number, JobCard.CardStep step) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Heading(
            2,
            number
                + ". "
                + Texts.capital(step.step().kind().words())
                + ": "
                + (step.where().isEmpty() ? "the whole boat" : String.join("; ", step.where()))));
    if (!step.stops().isEmpty()) {
      blocks.add(
          new Block.Lead(
              "Read before this step: "
                  + String.join(" ", step.stops().stream().map(Stop::sentence).toList())));
    }
    List<Block.Fact> facts = new ArrayList<>();
    text(facts, "With", StepWords.product(step));
    step.dilution().ifPresent(d -> facts.add(new Block.Fact("Mixture", d.words())));
    text(facts, "", String.join("\n", StepWords.mixes(step)));
    text(facts, "How", how(step.step()));
    text(facts, "Note", step.step().note());
    if (!facts.isEmpty()) {
      blocks.add(new Block.Facts(facts));
    }
    step.dwell().map(StepWords::dwell).ifPresent(d -> blocks.add(new Block.Words(d)));
    List<String> cautions = step.cautions().stream().map(Caution::text).distinct().toList();
    if (!cautions.isEmpty()) {
      blocks.add(new Block.Cautions(cautions));
    }
    blocks.add(new Block.Ticks(List.of("Done · minutes ________ · batch ______________")));
    return blocks;
  }

  private static String how(Step step) {
    return Stream.of(
            step.pad(),
            step.speed(),
            step.passes().map(p -> p == 1 ? "1 pass" : p + " passes").orElse(""))
        .filter(t -> !t.isBlank())
        .collect(Collectors.joining(" · "));
  }

  private static void text(List<Block.Fact> facts, String name, String text) {
    if (!text.isBlank()) {
      facts.add(new Block.Fact(name, text));
    }
  }
}
