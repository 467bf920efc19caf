package hullalmanac.present.shelf;

import hullalmanac.core.life.Survival;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.present.Invitation;
import hullalmanac.present.table.TableState;
import java.util.List;
import java.util.Optional;

/**
 * All that Shelf shows.
 *
 * @param list every product, those that are forecast first
 * @param chosen the product whose page is shown
 * @param choices products that can be laid beside it, the first entry being none
 * @param beside the one that is
 * @param pages the page of the product chosen, and of the one beside it
 * @param invitation what to do while there is no product
 */
public record ShelfState(
    List<Item> list,
    Optional<Id<Product>> chosen,
    List<Item> choices,
    Optional<Id<Product>> beside,
    List<Page> pages,
    Optional<Invitation> invitation) {
  public ShelfState {
    list = List.copyOf(list);
    choices = List.copyOf(choices);
    pages = List.copyOf(pages);
  }

  /** Shown before the record has been read. */
  public static ShelfState waiting() {
    return new ShelfState(
        List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Optional.empty());
  }

  /**
   * A product in a list.
   *
   * @param product absent for "nothing beside it"
   * @param detail its kind
   * @param status how long its coats last, in few words
   */
  public record Item(Optional<Id<Product>> product, String name, String detail, String status) {
    @Override
    public String toString() {
      return name;
    }
  }

  /**
   * A product's page.
   *
   * @param sentence what the record says of its lives
   * @param more the rest of it
   * @param picture what was seen of its coats; absent for a product that is not forecast
   * @param tables the same in numbers
   * @param labelMonths what its label claims
   * @param places how long half of its coats last, by harbour
   * @param facts how it is used
   * @param cautions what to look out for, each with its source
   */
  public record Page(
      String name,
      String kind,
      String sentence,
      String more,
      Optional<Survival> picture,
      List<TableState> tables,
      Optional<Double> labelMonths,
      List<List<String>> places,
      List<List<String>> facts,
      List<String> cautions) {
    public Page {
      tables = List.copyOf(tables);
      places = List.copyOf(places);
      facts = List.copyOf(facts);
      cautions = List.copyOf(cautions);
    }
  }
}
