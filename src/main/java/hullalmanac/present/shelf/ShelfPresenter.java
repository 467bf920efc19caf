package hullalmanac.present.shelf;

import hullalmanac.core.life.ProductLives;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.report.MonthWords;
import hullalmanac.present.Desk;
import hullalmanac.present.Invitation;
import hullalmanac.present.edit.AuditSheet;
import hullalmanac.present.edit.PaperSheet;
import hullalmanac.present.edit.ProductSheet;
import hullalmanac.present.edit.SuppliesSheet;
import hullalmanac.present.shelf.ShelfState.Item;
import hullalmanac.service.Fleet;
import hullalmanac.service.Papers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The products, the page of the one chosen, and of another laid beside it. */
public final class ShelfPresenter {
  private static final Item NOTHING = new Item(Optional.empty(), "nothing beside it", "", "");

  private final Desk desk;
  private Consumer<ShelfState> view = s -> {};
  private ShelfState state = ShelfState.waiting();
  private Optional<Fleet> fleet = Optional.empty();

  public ShelfPresenter(Desk desk) {
    this.desk = desk;
  }

  /** Changes what is known of the product chosen. */
  public void change() {
    state.chosen().ifPresent(product -> desk.open(new ProductSheet(desk, product)));
  }

  /** Holds what was said against what was seen. */
  public void audit() {
    desk.open(new AuditSheet(desk));
  }

  /** What is left in the bottles, and whether it is enough. */
  public void supplies() {
    desk.open(new SuppliesSheet(desk));
  }

  /** How long products last, as it would be printed. */
  public void onPaper() {
    desk.open(PaperSheet.of(desk, Papers.Asked.ofAll(Papers.Sort.LIVES)));
  }

  /** Puts a new product on the shelf, to be described. */
  public void add() {
    Id<Product> id = desk.ids().next();
    desk.edit(
        "a product put on the shelf",
        almanac -> Edit.put(ProductSheet.unknown(id, almanac)),
        () -> {
          choose(id);
          desk.open(new ProductSheet(desk, id));
        });
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<ShelfState> view) {
    this.view = view;
    view.accept(state);
  }

  /** Shows a fleet's products; the one chosen stays chosen. */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    List<Item> list = list(fleet);
    Optional<Id<Product>> first = list.stream().findFirst().flatMap(Item::product);
    publish(
        list,
        state.chosen().filter(p -> on(list, p)).or(() -> first),
        state.beside().filter(p -> on(list, p)));
  }

  private static boolean on(List<Item> list, Id<Product> product) {
    return list.stream().anyMatch(i -> i.product().equals(Optional.of(product)));
  }

  /** Shows a product's page. */
  public void choose(Id<Product> product) {
    Optional<Id<Product>> beside = state.beside().filter(b -> !b.equals(product));
    publish(state.list(), Optional.of(product), beside);
  }

  /** Lays another product beside it, or none. */
  public void layBeside(Optional<Id<Product>> other) {
    publish(state.list(), state.chosen(), other);
  }

  private void publish(
      List<Item> list, Optional<Id<Product>> chosen, Optional<Id<Product>> beside) {
    List<ShelfState.Page> pages = new ArrayList<>();
    fleet.ifPresent(
        f -> {
          ShelfWords words = new ShelfWords(f);
          chosen.map(words::page).ifPresent(pages::add);
          beside.map(words::page).ifPresent(pages::add);
        });
    List<Item> choices = new ArrayList<>(List.of(NOTHING));
    list.stream().filter(i -> !i.product().equals(chosen)).forEach(choices::add);
    state = new ShelfState(list, chosen, choices, beside, pages, invitation());
    view.accept(state);
  }

  private Optional<Invitation> invitation() {
    return fleet
        .filter(f -> f.almanac().products().isEmpty())
        .map(
            f ->
                new Invitation(
                    "Put something on the shelf",
                    "A product needs a name and a kind; the months that its label promises help the"
                        + " forecast. How long it really lasts, your own record will say here.",
                    "New product"));
  }

  private static List<Item> list(Fleet fleet) {
    Map<Id<Product>, ProductLives> lives =
        fleet.lives().stream()
            .collect(Collectors.toMap(l -> l.product().id(), Function.identity()));
    return fleet.almanac().products().stream()
        .sorted(
            Comparator.comparing((Product p) -> !lives.containsKey(p.id()))
                .thenComparing(Product::name, String.CASE_INSENSITIVE_ORDER))
        .map(p -> item(p, Optional.ofNullable(lives.get(p.id()))))
        .toList();
  }

  private static Item item(Product p, Optional<ProductLives> lives) {
    String status =
        lives
            .map(
                l ->
                    l.seen().tooFew()
                        ? "too few to say"
                        : "half last " + MonthWords.of(ShelfWords.homeMonths(l)))
            .orElse("not forecast");
    return new Item(Optional.of(p.id()), p.name(), p.kind().words(), status);
  }
}
