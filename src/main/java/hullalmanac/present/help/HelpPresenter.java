package hullalmanac.present.help;

import hullalmanac.core.guide.Anchor;
import hullalmanac.core.guide.Guide;
import hullalmanac.core.guide.GuidePage;
import hullalmanac.core.guide.Spot;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Pixels;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.service.GuideService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The guide over whatever one was doing: its pages, finding in them, going back and forward, and
 * what is to be known of the program. What was opened before is there again the next time.
 */
public final class HelpPresenter {
  private static final int USUAL_WIDTH = 720;

  private final TaskRunner tasks;
  private final List<Spot> trail = new ArrayList<>();
  private Supplier<Program> program = Program::nowhere;
  private Consumer<HelpState> view = s -> {};
  private Optional<Guide> guide = Optional.empty();
  private Optional<HelpState.Shown> shown = Optional.empty();
  private Runnable afterwards = () -> {};
  private boolean open;
  private String find = "";
  private String said = "";
  private int at = -1;
  private int width = USUAL_WIDTH;
  private boolean dark;
  private long newest;
  private long visits;

  public HelpPresenter(TaskRunner tasks) {
    this.tasks = tasks;
  }

  /** Tells which program this is. */
  public void of(Program installed) {
    program = () -> installed;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<HelpState> view) {
    this.view = view;
    publish();
  }

  /** Says how wide pictures may be, in pixels, and on what ground they lie. */
  public void fits(int wide, boolean onDark) {
    if (wide != width || onDark != dark) {
      width = wide;
      dark = onDark;
      shown.ifPresent(s -> fetch(s.spot(), s.visit(), s.marked()));
    }
  }

  /** Opens the guide at what it says of something. */
  public void open(Topic topic) {
    open(topic, () -> {});
  }

  /**
   * Opens the guide at what it says of something.
   *
   * @param left called once it was left
   */
  public void open(Topic topic, Runnable left) {
    if (!open) {
      afterwards = left;
      find = "";
    }
    open = true;
    said = "";
    publish();
    withGuide(
        g ->
            visit(
                g.target(topic.link())
                    .orElseThrow(
                        () -> new IllegalStateException("the guide lacks " + topic.link()))));
  }

  /** Leaves it for what one was doing. */
  public void leave() {
    if (open) {
      open = false;
      Runnable next = afterwards;
      afterwards = () -> {};
      publish();
      next.run();
    }
  }

  /** Leaves it because one goes elsewhere; what was to follow does not. */
  public void leaveFor() {
    afterwards = () -> {};
    leave();
  }

  /** Whether it is to be seen. */
  public boolean isOpen() {
    return open;
  }

  /** Lists the pages that have some words. */
  public void find(String text) {
    find = text;
    publish();
  }

  /** Opens a page from the list, at what was looked for. */
  public void choose(HelpState.Item item) {
    visit(new Spot(item.page(), ""));
  }

  /** Follows a link of a page. */
  public void follow(String link) {
    Optional<Spot> target = guide.flatMap(g -> g.target(link));
    if (target.isPresent()) {
      visit(target.get());
    } else {
      said = "This leads out of the program, which opens no connection: " + link;
      publish();
    }
  }

  /** Goes back to the page before. */
  public void back() {
    if (at > 0) {
      at--;
      show(trail.get(at));
    }
  }

  /** Goes forward again. */
  public void forward() {
    if (at + 1 < trail.size()) {
      at++;
      show(trail.get(at));
    }
  }

  /**
   * Does what a button of the page says.
   *
   * @param copy puts a text on the clipboard
   */
  public void press(String button, Consumer<String> copy) {
    switch (button) {
      case AboutPage.REPORT ->
          ask(
              Program::report,
              report -> {
                copy.accept(report);
                say("Copied. Read it before you send it; no owner and no boat is in it.");
              });
      case AboutPage.RECORD -> showFolder(Program.Facts::record);
      case AboutPage.STATE -> showFolder(Program.Facts::state);
      default -> throw new IllegalArgumentException("there is no button " + button);
    }
  }

  private void showFolder(java.util.function.Function<Program.Facts, String> which) {
    ask(p -> p.show(which.apply(p.facts())), refused -> say(refused.orElse("")));
  }

  private <T> void ask(java.util.function.Function<Program, T> question, Consumer<T> answer) {
    Program asked = program.get();
    tasks.run(Lane.DATABASE, () -> question.apply(asked), answer, HelpPresenter::failed);
  }

  private static void failed(RuntimeException e) {
    throw e;
  }

  private void say(String sentence) {
    said = sentence;
    publish();
  }

  private void withGuide(Consumer<Guide> next) {
    if (guide.isPresent()) {
      next.accept(guide.get());
      return;
    }
    Program about = program.get();
    tasks.run(
        Lane.DATABASE,
        () -> {
          List<GuidePage> pages = new ArrayList<>(GuideService.read().pages());
          pages.add(about(about));
          return new Guide(pages);
        },
        read -> {
          guide = Optional.of(read);
          next.accept(read);
        },
        HelpPresenter::failed);
  }

  private static GuidePage about(Program program) {
    return GuideService.page(AboutPage.ID, AboutPage.markdown(program.facts()));
  }

  private void visit(Spot spot) {
    trail.subList(at + 1, trail.size()).clear();
    if (at < 0 || !trail.get(at).equals(spot)) {
      trail.add(spot);
      at++;
    }
    show(spot);
  }

  /** Fetches a page's pictures, then shows it; only the newest page asked for is shown. */
  private void show(Spot spot) {
    said = "";
    fetch(spot, ++visits, Guide.words(find));
  }

  private void fetch(Spot spot, long visit, List<String> marked) {
    long mine = ++newest;
    Program asked = program.get();
    GuidePage known = guide.orElseThrow().page(spot.page()).orElseThrow();
    int wide = width;
    boolean onDark = dark;
    tasks.run(
        Lane.DATABASE,
        () -> {
          GuidePage page = spot.page().equals(AboutPage.ID) ? about(asked) : known;
          return new Fetched(page, pictures(page, onDark, wide));
        },
        fetched -> {
          if (mine == newest) {
            arrived(spot, visit, marked, fetched);
          }
        },
        HelpPresenter::failed);
  }

  private record Fetched(GuidePage page, Map<String, Pixels> pictures) {}

  private static Map<String, Pixels> pictures(GuidePage page, boolean dark, int widest) {
    Map<String, Pixels> pictures = new LinkedHashMap<>();
    for (String name : page.pictures()) {
      GuideService.picture(name, dark, widest).ifPresent(p -> pictures.put(name, p));
    }
    return pictures;
  }

  private void arrived(Spot spot, long visit, List<String> marked, Fetched fetched) {
    shown =
        Optional.of(
            new HelpState.Shown(
                spot,
                visit,
                fetched.page().title(),
                fetched.page().html(),
                fetched.pictures(),
                marked,
                spot.page().equals(AboutPage.ID) ? AboutPage.buttons() : List.of()));
    publish();
  }

  private void publish() {
    List<HelpState.Item> list = list();
    view.accept(
        new HelpState(
            open, find, list, found(list.size()), shown, at > 0, at + 1 < trail.size(), said));
  }

  private List<HelpState.Item> list() {
    return guide
        .map(
            g ->
                find.isBlank()
                    ? g.pages().stream()
                        .map(p -> new HelpState.Item(p.id(), p.title(), contents(p)))
                        .toList()
                    : g.find(find).stream()
                        .map(f -> new HelpState.Item(f.page().id(), f.page().title(), f.excerpt()))
                        .toList())
        .orElse(List.of());
  }

  private String found(int pages) {
    if (guide.isEmpty()) {
      return "Opening …";
    }
    if (find.isBlank()) {
      return pages + " pages";
    }
    return switch (pages) {
      case 0 -> "On no page. Try fewer letters of it.";
      case 1 -> "On 1 page";
      default -> "On " + pages + " pages";
    };
  }

  /** What is on a page besides what it is called. */
  private static String contents(GuidePage page) {
    return page.anchors().stream().skip(1).map(Anchor::words).collect(Collectors.joining(", "));
  }
}
