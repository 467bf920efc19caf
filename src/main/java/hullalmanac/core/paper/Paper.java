package hullalmanac.core.paper;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.Texts;
import java.util.List;

/**
 * One document as it is to be printed.
 *
 * @param title what it is, over it and in the window of whoever reads it
 * @param about of what: a boat, a number, a span of days; may be empty
 * @param sender whose paper it is
 * @param size what it is printed on
 * @param blocks from the top
 */
public record Paper(
    String title, String about, Sender sender, Business.Paper size, List<Block> blocks) {
  /** Said wherever a day that lies ahead is. */
  public static final String FORECAST = "A forecast, not a guarantee.";

  public Paper {
    Texts.require(title, "the title of a paper");
    blocks = List.copyOf(blocks);
  }

  /** What it is, and of what. */
  public String name() {
    return about.isBlank() ? title : title + ": " + about;
  }

  /**
   * Whose paper it is.
   *
   * @param address lines of the address, with phone and mail where wanted
   * @param taxNumber blank where there is none
   * @param mark the file of a picture among the photos of the record; blank where there is none
   */
  public record Sender(String name, List<String> address, String taxNumber, String mark) {
    public Sender {
      Texts.require(name, "the name on a letterhead");
      address = List.copyOf(address);
    }

    static Sender of(Business business) {
      return new Sender(
          business.name(),
          business.letterhead().address().lines().filter(l -> !l.isBlank()).toList(),
          business.letterhead().taxNumber().strip(),
          business.letterhead().mark());
    }
  }

  /** A paper of a business, on the size it prints on. */
  static Paper of(Business business, String title, String about, List<Block> blocks) {
    return new Paper(title, about, Sender.of(business), business.habits().paper(), blocks);
  }
}
