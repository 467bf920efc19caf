package hullalmanac.service;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.report.MailDraft;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.mail.Attachment;
import hullalmanac.exchange.mail.DraftFile;
import hullalmanac.exchange.mail.Mailto;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes mail drafts, which a person sends from their own mail program. Sends nothing. */
public final class MailService {
  private static final int LONGEST_NAME = 60;

  private final Clock clock;

  MailService(Clock clock) {
    this.clock = clock;
  }

  /**
   * Writes a draft as a message file.
   *
   * @param attached files that go with it, in order
   * @param file to write, usually with the ending {@code .eml}; one that is there is written over
   * @return why it was not written, a sentence; nothing when it was
   */
  public Optional<String> write(MailDraft draft, List<Path> attached, Path file) {
    try {
      List<Attachment> attachments = new ArrayList<>();
      for (Path one : attached) {
        attachments.add(
            new Attachment(one.getFileName().toString(), ByteBuffer.wrap(Files.readAllBytes(one))));
      }
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
              + ". Choose a folder that is there, with room in it, and look that what goes with it"
              + " can be read.",
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
   */
  Written letter(MailDraft draft, String to, LocalDate day, Path record) {
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
    Optional<String> refused = write(draft, List.of(), file);
    return new Written(refused.isEmpty() ? Optional.of(file) : Optional.empty(), refused);
  }

  /** The draft as a link that any mail program opens; without files. */
  public String link(MailDraft draft) {
    return Mailto.of(draft);
  }
}
