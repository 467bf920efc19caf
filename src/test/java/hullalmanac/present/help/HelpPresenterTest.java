package hullalmanac.present.help;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.guide.Topic;
import hullalmanac.fixture.EverySheet;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.find.FindState;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.ShellState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Help over what one does, on the sample. */
@Tag("slow")
class HelpPresenterTest {
  private static ShellPresenter shell;
  private HelpPresenter help;
  private final AtomicReference<HelpState> now = new AtomicReference<>();

  /** A program with one crash report, which notes what it was asked to show. */
  private static final class Noting implements Program {
    private final List<String> shown = new ArrayList<>();

    @Override
    public Facts facts() {
      return new Facts("9.8", "17", "a | system", "/boats", "/state", List.of("crash-1.txt"));
    }

    @Override
    public String report() {
      return "a report";
    }

    @Override
    public Optional<String> show(String folder) {
      shown.add(folder);
      return Optional.of("No desktop.");
    }
  }

  @BeforeAll
  static void load() {
    shell = new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
    shell.load();
  }

  @BeforeEach
  void begin() {
    shell.owner().leave();
    shell.find().leave();
    shell.go(Place.AHEAD);
    help = shell.help();
    help.onChange(now::set);
  }

  /** Help that has not been open yet, over nothing. */
  private void fresh() {
    help = new HelpPresenter(new InlineTaskRunner());
    help.onChange(now::set);
  }

  private String page() {
    return now.get().shown().orElseThrow().spot().page();
  }

  private String link() {
    HelpState.Shown shown = now.get().shown().orElseThrow();
    return shown.spot().anchor().isEmpty()
        ? shown.spot().page()
        : shown.spot().page().replaceAll("#.*", "") + "#" + shown.spot().anchor();
  }

  @Test
  void opensAtThePlaceThatIsShownAndLeavesItAsItWas() {
    AtomicReference<ShellState> window = new AtomicReference<>();
    shell.onChange(window::set);
    for (Place place : Place.values()) {
      shell.go(place);
      ShellState before = window.get();
      shell.openHelp();
      assertThat(now.get().open()).isTrue();
      assertThat(link())
          .isEqualTo(place == Place.SETTINGS ? Topic.SETTINGS.link() : place.topic().link());
      help.leave();
      assertThat(now.get().open()).isFalse();
      assertThat(window.get()).isEqualTo(before);
    }
  }

  @Test
  void opensAtTheSheetThatIsShown() {
    for (Sheet sheet : EverySheet.of(shell, OpenSample.fleet().almanac())) {
      shell.open(sheet);
      shell.openHelp();
      assertThat(link()).as(sheet.getClass().getSimpleName()).isEqualTo(sheet.topic().link());
      help.leave();
      shell.leave();
    }
  }

  @Test
  void goesBackToWhatWasTypedWhileFinding() {
    AtomicReference<FindState> finding = new AtomicReference<>();
    shell.find().onChange(finding::set);
    shell.startFinding();
    shell.find().type("quill");
    shell.openHelp();
    assertThat(finding.get().open()).isFalse();
    assertThat(link()).isEqualTo(Topic.FIND.link());
    help.leave();
    assertThat(finding.get().text()).isEqualTo("quill");
  }

  @Test
  void goesBackToTheBoatThatIsShownToHerOwner() {
    shell.showOwner(OpenSample.fleet().almanac().boats().get(0).id());
    shell.openHelp();
    assertThat(shell.owner().shown()).isEmpty();
    assertThat(link()).isEqualTo(Topic.OWNER.link());
    help.leave();
    assertThat(shell.owner().shown()).isPresent();
  }

  @Test
  void isLeftForAnotherPlaceWithoutComingBack() {
    shell.startFinding();
    shell.openHelp();
    shell.go(Place.SHELF);
    assertThat(now.get().open()).isFalse();
    assertThat(shell.find().text()).isEmpty();
  }

  @Test
  void followsLinksAndGoesBackAndForward() {
    fresh();
    help.open(Topic.START);
    help.follow("guide/record.md");
    help.follow("guide/record.md#what-is-promised");
    help.back();
    help.back();
    assertThat(page()).isEqualTo("guide/README.md");
    assertThat(now.get().back()).isFalse();
    help.forward();
    assertThat(page()).isEqualTo("guide/record.md");
    assertThat(now.get().forward()).isTrue();
    help.follow("guide/first-day.md");
    assertThat(now.get().forward()).isFalse();
  }

  @Test
  void opensNoAddressOutsideButSaysIt() {
    fresh();
    help.open(Topic.START);
    help.follow("https://example.org/");
    assertThat(now.get().said()).contains("https://example.org/").contains("opens no connection");
    assertThat(page()).isEqualTo("guide/README.md");
  }

  @Test
  void listsThePagesThatHaveTheWordsAndMarksThem() {
    fresh();
    help.open(Topic.START);
    int all = now.get().list().size();
    assertThat(now.get().found()).isEqualTo(all + " pages");
    help.find("Latitude");
    assertThat(now.get().list()).isNotEmpty().hasSizeLessThan(all);
    help.choose(now.get().list().get(0));
    assertThat(now.get().shown().orElseThrow().marked()).containsExactly("latitude");
    help.find("zebra");
    assertThat(now.get().found()).isEqualTo("On no page. Try fewer letters of it.");
  }

  @Test
  void namesTheProgramAndCopiesAReport() {
    fresh();
    Noting program = new Noting();
    help.of(program);
    help.open(Topic.ABOUT);
    HelpState.Shown about = now.get().shown().orElseThrow();
    assertThat(about.html()).contains("9.8", "a | system", "/boats", "/state", "crash-1.txt");
    AtomicReference<String> copied = new AtomicReference<>();
    help.press(AboutPage.REPORT, copied::set);
    assertThat(copied.get()).isEqualTo("a report");
    assertThat(now.get().said()).startsWith("Copied.");
    help.press(AboutPage.RECORD, copied::set);
    help.press(AboutPage.STATE, copied::set);
    assertThat(program.shown).containsExactly("/boats", "/state");
    assertThat(now.get().said()).isEqualTo("No desktop.");
  }

  @Test
  void aCrashIsSaidOnceAndLeadsToAbout() {
    AtomicReference<ShellState> window = new AtomicReference<>();
    shell.onChange(window::set);
    shell.tellOfCrash("It broke. The report lies there.");
    shell.tellOfCrash("It broke again.");
    assertThat(window.get().notices()).hasSize(1);
    assertThat(window.get().notices().get(0).words()).startsWith("It broke. ");
    shell.press(window.get().notices().get(0));
    assertThat(page()).isEqualTo(AboutPage.ID);
    assertThat(window.get().notices()).isEmpty();
  }
}
