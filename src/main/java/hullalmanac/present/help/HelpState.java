package hullalmanac.present.help;

import hullalmanac.core.guide.Spot;
import hullalmanac.core.record.Pixels;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that help shows.
 *
 * @param open whether it is to be seen
 * @param find what is looked for
 * @param list the pages, or those that have what is looked for
 * @param found how many they are, in words
 * @param shown the page that is open
 * @param back whether there was one before it
 * @param forward whether one went back from another
 * @param said what came of a button or a link; empty when there is nothing to say
 */
public record HelpState(
    boolean open,
    String find,
    List<Item> list,
    String found,
    Optional<Shown> shown,
    boolean back,
    boolean forward,
    String said) {
  public HelpState {
    list = List.copyOf(list);
  }

  /** Before it is opened. */
  public static HelpState closed() {
    return new HelpState(false, "", List.of(), "", Optional.empty(), false, false, "");
  }

  /**
   * A page in the list.
   *
   * @param about what is on it, or what was found there
   */
  public record Item(String page, String title, String about) {}

  /**
   * A page as it is shown.
   *
   * @param visit counts up, so that going to the same place again is told from staying
   * @param pictures by their names on the page
   * @param marked words to be marked; the first is gone to where the place is the top
   */
  public record Shown(
      Spot spot,
      long visit,
      String title,
      String html,
      Map<String, Pixels> pictures,
      List<String> marked,
      List<Button> buttons) {
    public Shown {
      pictures = Map.copyOf(pictures);
      marked = List.copyOf(marked);
      buttons = List.copyOf(buttons);
    }
  }

  /** A thing to do on a page. */
  public record Button(String id, String words) {}
}
