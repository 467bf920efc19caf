package hullalmanac.core.report;

import java.util.List;

/**
 * A message that a person may send from their own mail program. This program sends none.
 *
 * @param to may be empty: then the person writes it
 * @param subject one line
 * @param text plain, any number of lines
 */
public record MailDraft(List<Recipient> to, String subject, String text) {
  public MailDraft {
    to = List.copyOf(to);
  }

  /**
   * Somebody written to.
   *
   * @param name as it is called; may be empty
   * @param address such as {@code ada@example.org}
   */
  public record Recipient(String name, String address) {}
}
