package hullalmanac.present.settings;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.present.Desk;
import hullalmanac.present.Look;
import hullalmanac.present.edit.BusinessSheet;
import hullalmanac.present.edit.CalendarSheet;
import hullalmanac.present.edit.LookSheet;
import hullalmanac.present.edit.PracticeSheet;
import hullalmanac.present.edit.RatesSheet;
import hullalmanac.present.edit.RecordSheet;
import hullalmanac.present.edit.WordingSheet;
import hullalmanac.present.house.CalendarFollower;
import hullalmanac.present.house.House;
import hullalmanac.present.settings.SettingsState.Page;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The pages of settings, and the one chosen. */
public final class SettingsPresenter {
  private final Map<Page, Supplier<Sheet>> pages = new LinkedHashMap<>();
  private Consumer<SettingsState> view = s -> {};
  private String find = "";
  private Optional<Page> chosen = Optional.empty();
  private Optional<Sheet> sheet = Optional.empty();
  private Optional<Fleet> fleet = Optional.empty();
  private Look.Looks looks = new Unseen();

  /** How nothing looks before there is a window. */
  private static final class Unseen implements Look.Looks {
    private Look look = Look.USUAL;

    @Override
    public Look now() {
      return look;
    }

    @Override
    public void become(Look other) {
      look = other;
    }
  }

  /**
   * @param house who moves the record as a whole
   */
  public SettingsPresenter(Desk desk, Supplier<House> house, CalendarFollower calendar) {
    for (BusinessSheet.Page page : BusinessSheet.Page.values()) {
      pages.put(new Page(page.words(), page.about()), () -> new BusinessSheet(desk, page));
    }
    pages.put(
        new Page("Rates by length", "What a foot or a metre costs"), () -> new RatesSheet(desk));
    pages.put(new Page("Letters", "How they are worded"), () -> new WordingSheet(desk));
    pages.put(new Page("How it looks", "Light or dark, size, targets"), () -> new LookSheet(looks));
    pages.put(
        new Page("Calendars", "Following the record, busy days"),
        () -> new CalendarSheet(desk, calendar));
    pages.put(
        new Page("The record and its copies", "Where it lies, moving, a second place"),
        () -> new RecordSheet(desk, house));
    for (PracticeValue.Topic topic : PracticeValue.Topic.values()) {
      pages.put(new Page(topic.words(), topic.about()), () -> new PracticeSheet(desk, topic));
    }
  }

  /** Tells who can change how the window looks. */
  public void seenBy(Look.Looks window) {
    looks = window;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<SettingsState> view) {
    this.view = view;
    publish();
  }

  /** Shows a record; the page that is open stays open. */
  public void show(Fleet now) {
    fleet = Optional.of(now);
    if (chosen.isEmpty()) {
      choose(pages.keySet().iterator().next());
    }
    sheet.ifPresent(s -> s.show(now));
  }

  /** Shows again what is said of what goes on beside the record. */
  public void tick() {
    sheet.ifPresent(Sheet::tick);
  }

  /** What the guide says of the page that is open. */
  public Topic topic() {
    return sheet.map(Sheet::topic).orElse(Topic.SETTINGS);
  }

  /** Lists the pages that hold a text. */
  public void find(String text) {
    find = text;
    publish();
  }

  /** Opens a page. */
  public void choose(Page page) {
    if (!chosen.equals(Optional.of(page))) {
      chosen = Optional.of(page);
      Sheet opened = pages.get(page).get();
      sheet = Optional.of(opened);
      fleet.ifPresent(opened::show);
      publish();
    }
  }

  private void publish() {
    List<Page> list = new ArrayList<>();
    String wanted = find.strip().toLowerCase(Locale.ROOT);
    for (Page page : pages.keySet()) {
      if ((page.name() + " " + page.about()).toLowerCase(Locale.ROOT).contains(wanted)) {
        list.add(page);
      }
    }
    view.accept(
        new SettingsState(
            find,
            list,
            list.isEmpty() ? "Nothing is called that." : list.size() + " pages",
            chosen,
            sheet));
  }
}
