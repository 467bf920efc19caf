package hullalmanac.service;

import hullalmanac.core.record.Party;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.work.Card;
import hullalmanac.core.work.CardVersion;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Contacts;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.vcard.CardFile;
import hullalmanac.exchange.vcard.CardReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Parties as contact cards, in and out. Everything here touches files. */
public final class ContactsService {
  private final RecordService record;

  public ContactsService(RecordService record) {
    this.record = record;
  }

  /**
   * Writes all parties into a file that is new, or that they were written into before.
   *
   * @return how many cards it holds
   */
  public int write(Path file, CardVersion version) {
    return write(record.almanac().parties(), file, version);
  }

  private static int write(List<Party> parties, Path file, CardVersion version) {
    try {
      refuseStranger(file);
      WholeFile.write(file, CardFile.text(parties, version).getBytes(StandardCharsets.UTF_8));
      return parties.size();
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The cards cannot be written to "
              + file
              + ". Choose a folder that is there, with room in it.",
          e);
    }
  }

  /** The same into a file named by its path as text. */
  public static int write(List<Party> parties, String file, CardVersion version) {
    try {
      return write(parties, Path.of(file), version);
    } catch (InvalidPathException e) {
      throw new RecordException(
          RecordException.Kind.MISSING,
          "No file can be called \"" + file + "\". Choose another name.",
          e);
    }
  }

  /** Cards of others are not written over: they may be all that somebody has of them. */
  private static void refuseStranger(Path file) throws IOException {
    if (Files.exists(file)) {
      boolean ours =
          Files.isRegularFile(file)
              && CardFile.isOurs(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      if (!ours) {
        throw new RecordException(
            RecordException.Kind.IN_THE_WAY,
            file + " holds something else than cards of this program. Choose another name.");
      }
    }
  }

  /**
   * Cards of a file beside the parties of the record. Nothing is changed.
   *
   * @param contacts which are new, which may be somebody who is known, which are there already
   * @param problems what could not be taken, a sentence each
   */
  public record Compared(Contacts contacts, List<String> problems) {
    public Compared {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file of cards of any version. */
  public Compared compare(Path file) {
    try {
      CardReader.Read read = CardReader.read(Files.readAllBytes(file));
      return new Compared(
          Contacts.of(record.almanac(), read.cards(), record.ids()), read.problems());
    } catch (IOException e) {
      throw missing(file.toString(), e);
    }
  }

  private static RecordException missing(String file, Exception e) {
    return new RecordException(
        RecordException.Kind.MISSING,
        "The cards " + file + " cannot be read. Name a file that ends with .vcf.",
        e);
  }

  /**
   * Cards that were read.
   *
   * @param problems what could not be taken, a sentence each
   */
  public record Cards(List<Card> cards, List<String> problems) {
    public Cards {
      cards = List.copyOf(cards);
      problems = List.copyOf(problems);
    }
  }

  /** Reads cards of any version from a file, named by its path as text; not from the record. */
  public static Cards read(String file) {
    try {
      return read(Files.readAllBytes(Path.of(file)));
    } catch (IOException | InvalidPathException e) {
      return new Cards(List.of(), List.of(missing(file, e).getMessage()));
    }
  }

  /** Reads cards of any version from a text. */
  public static Cards pasted(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Cards read(byte[] content) {
    CardReader.Read read = CardReader.read(content);
    return new Cards(read.cards(), read.problems());
  }

  /**
   * Puts new ones into the record, in one act that one undo takes back.
   *
   * @param merge whether those who may be known are made one with whom they are like; otherwise
   *     they are left out
   */
  public Change bringIn(Path file, Contacts contacts, boolean merge) {
    return new EditService(record)
        .change(
            "contact cards of " + file.getFileName(),
            almanac -> Change.checked(almanac, contacts.edit(almanac, merge)));
  }
}
