package hullalmanac.service;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.report.MailDraft;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.mail.Attachment;
import hullalmanac.exchange.mail.DraftFile;
import hullalmanac.exchange.mail.Mailto;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Writes mail drafts, which a person sends from their own mail program. Sends nothing. */
public final class MailService {
  private static final int LONGEST_NAME = 60;

  /** Some systems cut links after so many characters (common practice, no source). */
  private static final int LONGEST_LINK = 2000;

  private final Clock clock;

  MailService(Clock clock) {
    this.clock = clock;
  }

  /**
   * Writes a draft as a message file.
   *
   * @param attached papers that go with it, in order
   * @param file to write, usually with the ending {@code .eml}; one that is there is written over
   * @return why it was not written, a sentence; nothing when it was
   */
  public Optional<String> write(MailDraft draft, List<MadePaper> attached, Path file) {
    try {
      List<Attachment> attachments =
          attached.stream().map(p -> new Attachment(p.fileName(), p.made().content())).toList();
      DraftFile.Outcome outcome = DraftFile.of(draft, attachments, clock.instant());
      if (outcome instanceof DraftFile.Refused refused) {
        return Optional.of(refused.sentence());
      }
      String text = ((DraftFile.Made) outcome).text();
      WholeFile.write(file, text.getBytes(StandardCharsets.US_ASCII));
      return Optional.empty();
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The draft cannot be written to "
              + file
              + ". Choose a folder that is there, with room in it.",
          e);
    }
  }

  /** A letter's file, or why there is none. */
  public record Written(Optional<Path> file, Optional<String> refused) {}

  /**
   * Writes a letter into the folder {@code letters} of a record; one to the same person, of the
   * same day and subject, is written over.
   *
   * @param to the name of who it is to
   * @param with papers that go with it
   */
  Written letter(MailDraft draft, String to, LocalDate day, List<MadePaper> with, Path record) {
    String name = (to + " " + draft.subject()).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    String shortened = name.substring(0, Math.min(name.length(), LONGEST_NAME)).strip();
    Path folder = record.resolve("letters");
    Path file = folder.resolve((day + " " + shortened).strip() + ".eml");
    try {
      if (!Files.isDirectory(folder)) {
        Files.createDirectory(folder);
      }
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The folder " + folder + " cannot be made. Look whether the record is still there.",
          e);
    }
    Optional<String> refused = write(draft, with, file);
    return new Written(refused.isEmpty() ? Optional.of(file) : Optional.empty(), refused);
  }

  /** A link, or why there is none. */
  public record Link(Optional<String> link, Optional<String> refused) {
    /** Whether it is so long that some systems cut it. */
    public boolean isLong() {
      return link.filter(l -> l.length() > LONGEST_LINK).isPresent();
    }
  }

  /** The draft as a link that any mail program opens; without files. */
  public Link link(MailDraft draft) {
    Optional<String> refused = DraftFile.refusal(draft);
    return new Link(refused.isEmpty() ? Optional.of(Mailto.of(draft)) : Optional.empty(), refused);
  }
}
