package hullalmanac.present.edit;

import hullalmanac.core.record.Texts;
import hullalmanac.core.report.MailDraft;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Said;
import hullalmanac.service.EditService;
import hullalmanac.service.Fleet;
import hullalmanac.service.MadePaper;
import hullalmanac.service.Papers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * How a letter leaves the house: as a draft with a paper, or handed to the mail program.
 *
 * @param said takes what came of it, or why nothing did
 */
record LetterOut(Desk desk, Consumer<Said> said) {
  private void say(String words) {
    said.accept(new Said(words, false));
  }

  private void refuse(String why) {
    said.accept(new Said(why, true));
  }

  /** A paper that goes with a letter, or why it does not. */
  private record Laid(Optional<MadePaper> paper, String refused) {}

  /**
   * Writes a draft; what goes with it is laid out first, which may take a second.
   *
   * @param to the name of who it is to
   */
  void draft(Fleet fleet, MailDraft draft, String to, Optional<Enclosure> with) {
    if (with.isEmpty()) {
      write(fleet, draft, to, List.of());
      return;
    }
    say("Laying out what goes with it: " + with.get().words() + " …");
    desk.ask(
        EditService::papers,
        maker ->
            desk.reckon(
                () -> lay(fleet, maker, with.get()),
                laid -> {
                  if (laid.paper().isPresent()) {
                    write(fleet, draft, to, laid.paper().stream().toList());
                  } else {
                    refuse("No draft was written. " + laid.refused());
                  }
                }));
  }

  private static Laid lay(Fleet fleet, MadePaper.Maker maker, Enclosure with) {
    Papers.Outcome outcome = new Papers(fleet).of(with.asked());
    return outcome instanceof Papers.Ready ready
        ? new Laid(Optional.of(maker.make(ready.paper(), fleet.asOf())), "")
        : new Laid(Optional.empty(), ((Papers.Refused) outcome).sentence());
  }

  private void write(Fleet fleet, MailDraft draft, String to, List<MadePaper> with) {
    desk.ask(
        edits -> edits.writeLetter(draft, to, fleet.asOf(), with),
        outcome ->
            outcome
                .file()
                .ifPresentOrElse(
                    file -> say(written(file, draft, with)),
                    () -> refuse("No draft was written. " + outcome.refused().orElseThrow())));
  }

  private static String written(Object file, MailDraft draft, List<MadePaper> with) {
    List<String> sentences = new ArrayList<>();
    sentences.add("Written to " + file + ". Open it to send it.");
    with.forEach(p -> sentences.add("With it goes " + p.fileName() + "."));
    with.forEach(p -> sentences.addAll(p.lacking()));
    nobody(draft).ifPresent(sentences::add);
    return String.join(" ", sentences);
  }

  private static Optional<String> nobody(MailDraft draft) {
    return draft.to().isEmpty()
        ? Optional.of("No mail address is known: write it there.")
        : Optional.empty();
  }

  /** Hands a letter to the mail program; a link carries no files. */
  void link(MailDraft draft, Optional<Enclosure> with) {
    desk.ask(
        edits -> edits.mail().link(draft),
        link -> {
          if (link.refused().isPresent()) {
            refuse("Nothing was opened. " + link.refused().get());
            return;
          }
          desk.outside()
              .mail(
                  link.link().orElseThrow(),
                  not ->
                      not.ifPresentOrElse(
                          this::refuse, () -> say(handed(draft, with, link.isLong()))));
        });
  }

  private static String handed(MailDraft draft, Optional<Enclosure> with, boolean isLong) {
    List<String> sentences = new ArrayList<>();
    sentences.add("Handed to the mail program.");
    with.ifPresent(
        w ->
            sentences.add(
                Texts.capital(w.words())
                    + " did not go with it: a link carries no files. Write a mail draft for that."));
    if (isLong) {
      sentences.add("The letter is long for a link: look whether its end came over.");
    }
    nobody(draft).ifPresent(sentences::add);
    return String.join(" ", sentences);
  }
}
