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
 * @param size what the business prints on
 * @param form how much of it
 * @param blocks from the top
 */
public record Paper(
    String title, String about, Sender sender, Business.Paper size, Form form, List<Block> blocks) {
  /** Said wherever a day that lies ahead is. */
  public static final String FORECAST = "A forecast, not a guarantee.";

  public Paper {
    Texts.require(title, "the title of a paper");
    blocks = List.copyOf(blocks);
  }

  /** A whole sheet. */
  public Paper(String title, String about, Sender sender, Business.Paper size, List<Block> blocks) {
    this(title, about, sender, size, Form.SHEET, blocks);
  }

  /** How much of a size of paper one is. */
  public enum Form {
    SHEET,
    /** To post: A6 where A4 is used (ISO 216), 4 by 6 inches where Letter is; on its side. */
    CARD
  }

  /** What it is printed on, in words. */
  public String printedOn() {
    return form == Form.SHEET ? size.words() : size == Business.Paper.A4 ? "A6" : "4 × 6 in";
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

  /** A card of a business. */
  static Paper card(Business business, String title, String about, List<Block> blocks) {
    return new Paper(
        title, about, Sender.of(business), business.habits().paper(), Form.CARD, blocks);
  }
}
