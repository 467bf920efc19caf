package hullalmanac.present.help;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.guide.Anchor;
import hullalmanac.core.guide.Guide;
import hullalmanac.core.guide.GuidePage;
import hullalmanac.core.guide.Topic;
import hullalmanac.fixture.EverySheet;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.service.GuideService;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The guide as the program carries it: nothing on it leads nowhere. */
class GuideTest {
  private static final Guide GUIDE = whole();

  private static Guide whole() {
    List<GuidePage> pages = new ArrayList<>(GuideService.read().pages());
    pages.add(GuideService.page(AboutPage.ID, AboutPage.markdown(Program.nowhere().facts())));
    return new Guide(pages);
  }

  @Test
  void everyLinkLeadsToAPageAndAPlaceOnIt() {
    List<String> links = new ArrayList<>();
    for (GuidePage page : GUIDE.pages()) {
      for (String link : page.links()) {
        links.add(link);
        assertThat(GUIDE.target(link)).as(page.id() + " leads to " + link).isPresent();
      }
    }
    assertThat(links).hasSizeGreaterThan(5);
  }

  @Test
  void everyPictureIsCarriedLightAndDark() {
    List<String> pictures = GUIDE.pages().stream().flatMap(p -> p.pictures().stream()).toList();
    assertThat(pictures).hasSizeGreaterThan(10);
    for (String picture : pictures) {
      assertThat(GuideService.picture(picture, false, 600).orElseThrow().width()).isEqualTo(600);
      if (picture.startsWith("guide/paper-") && !picture.contains("-light-")) {
        continue; // Paper is white on any ground.
      }
      assertThat(picture).contains("-light-");
      assertThat(
              GuideService.class.getResource(
                  "/hullalmanac/guide/" + picture.replace("-light-", "-dark-")))
          .as(picture + " on dark ground")
          .isNotNull();
    }
  }

  @Test
  void everyPageOfTheGuideIsCarried() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("docs/guide"))) {
      List<String> written =
          files
              .map(f -> f.getFileName().toString())
              .filter(f -> f.endsWith(".md"))
              .map(f -> "guide/" + f)
              .toList();
      assertThat(GUIDE.pages().stream().map(GuidePage::file)).containsAll(written);
    }
  }

  @Test
  void everyPageSaysSomethingAndHasANameOfItsOwn() {
    assertThat(GUIDE.pages().stream().map(GuidePage::id)).doesNotHaveDuplicates();
    assertThat(GUIDE.pages().stream().map(GuidePage::title)).doesNotHaveDuplicates();
    for (GuidePage page : GUIDE.pages()) {
      assertThat(page.text().length()).as(page.id()).isGreaterThan(100);
      assertThat(page.anchors().stream().map(Anchor::id)).as(page.id()).doesNotHaveDuplicates();
      // What Markdown did not take for marks would be read as such.
      assertThat(page.html()).as(page.id()).doesNotContain("](", "**", "| ---");
    }
  }

  @Test
  void everyTopicIsAPageAndAPlaceOnIt() {
    for (Topic topic : Topic.values()) {
      assertThat(GUIDE.target(topic.link())).as(topic.name()).isPresent();
    }
    assertThat(GUIDE.target("guide/README.md#no-such-place")).isEmpty();
  }

  @Test
  void everyPlaceHasATopicAndEverySheetNamesItsOwn() throws Exception {
    for (Place place : Place.values()) {
      assertThat(place.topic()).as(place.name()).isNotNull();
    }
    ShellPresenter desk =
        new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
    for (Sheet sheet : EverySheet.of(desk, OpenSample.fleet().almanac())) {
      assertThat(sheet.getClass().getMethod("topic").getDeclaringClass())
          .as("%s says what the guide says of it, with topic()", sheet.getClass().getSimpleName())
          .isNotEqualTo(Sheet.class);
      assertThat(sheet.topic()).isNotNull();
    }
  }

  @Test
  void theRecordsPageSaysWhatIsInTheFolderAndWhatIsPromised() {
    GuidePage record = GUIDE.page("guide/record.md").orElseThrow();
    assertThat(record.anchors().stream().map(Anchor::words))
        .contains("What is in this folder", "What is promised");
  }

  @Test
  void pagesAreFoundByWordsTheTitledFirst() {
    List<Guide.Found> found = GUIDE.find("evening PHOTOS");
    assertThat(found).isNotEmpty();
    assertThat(found).allSatisfy(f -> assertThat(f.page().text()).containsIgnoringCase("photos"));
    assertThat(GUIDE.find("people").get(0).page().title()).isEqualTo("People");
    assertThat(GUIDE.find("latitude").get(0).excerpt()).contains("latitude").startsWith("… ");
    assertThat(GUIDE.find("zebra crossing")).isEmpty();
    assertThat(GUIDE.find("  ")).isEmpty();
  }
}
