package hullalmanac.core.paper;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Party;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A card that tells an owner what is due, to post or to leave aboard. A letter that does not fit
 * below stands on its other side as a whole.
 */
public final class ReminderPaper {
  /** A line that is a phone number: from abroad, behind a name and a colon, or from a zero on. */
  private static final Pattern PHONE =
      Pattern.compile(
          "(?:\\p{L}[\\p{L} ]{0,20}[:.]? ?)?[+(][\\d ()./-]{6,}"
              + "|\\p{L}[\\p{L} ]{0,20}[:.] ?\\d[\\d ()./-]{5,}"
              + "|0[\\d ()./-]{6,}");

  private ReminderPaper() {}

  /**
   * What is due.
   *
   * @param lines what, and by when
   * @param forecast whether a day of it is one
   */
  public record Due(List<Block.Fact> lines, boolean forecast) {
    public Due {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Makes a card.
   *
   * @param to to whom it goes; where nobody is known it has no address
   * @param text the letter of the business, filled in
   */
  public static Paper of(Business business, Boat boat, Optional<Party> to, Due due, String text) {
    List<Block> blocks = new ArrayList<>();
    to.ifPresent(p -> blocks.add(new Block.Recipient(address(p))));
    blocks.add(new Block.Facts(due.lines()));
    if (due.forecast()) {
      blocks.add(new Block.Note(Paper.FORECAST));
    }
    List<Block> letter = new ArrayList<>();
    letter.add(new Block.Words(text));
    List<String> reach =
        business
            .letterhead()
            .address()
            .lines()
            .map(String::strip)
            .filter(ReminderPaper::reaches)
            .toList();
    if (!reach.isEmpty()) {
      letter.add(new Block.Facts(List.of(new Block.Fact("To answer", String.join(" · ", reach)))));
    }
    blocks.add(new Block.Kept(letter));
    return Paper.card(business, boat.name(), "A reminder", blocks);
  }

  private static List<String> address(Party party) {
    List<String> lines = new ArrayList<>();
    lines.add(party.name());
    party.address().lines().filter(l -> !l.isBlank()).forEach(lines::add);
    return lines;
  }

  /** Whether a line of the letterhead is a phone number or a mail address. */
  private static boolean reaches(String line) {
    return line.indexOf('@') > 0 || PHONE.matcher(line).matches();
  }
}
