package hullalmanac.exchange.page;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Kind;
import hullalmanac.exchange.csv.CsvSet;
import hullalmanac.exchange.csv.OneList;
import hullalmanac.exchange.csv.OneList.Cell;
import hullalmanac.fixture.OpenSample;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The page is read by the XML reader of Java, so that what is not well formed fails. */
class RecordPageTest {
  private static final Path SAMPLE_PHOTOS = Path.of("sample-db/csv/photos");

  private static Document read(String page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(
            new ByteArrayInputStream(
                page.replaceFirst("<!DOCTYPE html>", "").getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> all(Document page, String tag) {
    NodeList nodes = page.getElementsByTagName(tag);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add((Element) nodes.item(i));
    }
    return all;
  }

  private static Document sample() throws Exception {
    Almanac almanac = OpenSample.fleet().almanac();
    return read(
        RecordPage.of(almanac.business().name(), CsvSet.lists(almanac, true), "", Map.of()));
  }

  @Test
  void holdsEachRowOfEachListOnceAndEveryCell() throws Exception {
    List<OneList> lists = CsvSet.lists(OpenSample.fleet().almanac(), true);
    Document page = sample();
    long rows = lists.stream().mapToLong(l -> l.rows().size()).sum();
    long heads = all(page, "thead").size();
    assertThat(all(page, "tr").size() - heads).isEqualTo(rows).isGreaterThan(1000);
    Set<String> cells = new HashSet<>();
    all(page, "td").forEach(td -> cells.add(td.getTextContent()));
    for (OneList list : lists) {
      for (List<Cell> row : list.rows()) {
        for (Cell cell : row) {
          String text = cell.names().isPresent() ? String.join(", ", cell.parts()) : cell.text();
          boolean picture = list.kind() == Kind.PHOTO && text.endsWith(".png");
          assertThat(picture || cells.contains(text)).as(list.name() + ": " + text).isTrue();
        }
      }
    }
  }

  @Test
  void everyLinkLeadsToARowOrToAPhotoOfTheExportAndNowhereElse() throws Exception {
    Document page = sample();
    Set<String> ids = new HashSet<>();
    for (Element row : all(page, "tr")) {
      assertThat(row.getAttribute("id").isEmpty() || ids.add(row.getAttribute("id"))).isTrue();
    }
    int photos = 0;
    for (Element a : all(page, "a")) {
      String href = a.getAttribute("href");
      if (href.startsWith("#")) {
        assertThat(ids).contains(href.substring(1));
      } else {
        assertThat(href).startsWith("photos/");
        assertThat(Files.exists(SAMPLE_PHOTOS.resolve(href.substring("photos/".length()))))
            .isTrue();
        photos++;
      }
    }
    assertThat(photos).isEqualTo(OpenSample.fleet().almanac().photos().size()).isPositive();
    for (Element img : all(page, "img")) {
      assertThat(img.getAttribute("alt")).isNotEmpty();
      assertThat(img.getAttribute("src")).startsWith("photos/");
    }
    assertThat(all(page, "script")).isEmpty();
    assertThat(all(page, "link")).isEmpty();
  }

  @Test
  void aBoatHasAllThatBelongsToHerInOneSection() throws Exception {
    Element siskin =
        all(sample(), "section").stream()
            .filter(s -> s.getElementsByTagName("h2").item(0).getTextContent().equals("Siskin"))
            .findFirst()
            .orElseThrow();
    NodeList captions = siskin.getElementsByTagName("caption");
    List<String> lists = new ArrayList<>();
    for (int i = 0; i < captions.getLength(); i++) {
      lists.add(captions.item(i).getTextContent());
    }
    assertThat(lists).contains("Boats", "Roles", "Surfaces", "Berths", "Visits", "Steps", "Coats");
    assertThat(lists).doesNotContain("Harbours", "Parties", "Products");
  }

  private static Cell text(String text) {
    return new Cell(text, Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({
    "<script>alert(1)</script>",
    "\"><img src=x onerror=alert(1)>",
    "Tern & Daughter's <b>",
    "Πηνελόπη Ψ",
    "Катя"
  })
  void namesAreShownAsTheyAreAndNeverRun(String name) throws Exception {
    OneList boats =
        new OneList(
            "boats",
            Kind.BOAT,
            true,
            List.of("id", "name"),
            List.of(List.of(text(name), text(name))));
    Document page = read(RecordPage.of(name, List.of(boats), "", Map.of()));
    assertThat(all(page, "h2").get(0).getTextContent()).isEqualTo(name);
    assertThat(all(page, "td").get(1).getTextContent()).isEqualTo(name);
    assertThat(all(page, "script")).isEmpty();
    assertThat(all(page, "img")).isEmpty();
  }

  @Test
  void aPictureThatNoBrowserShowsIsALinkToItsFile() throws Exception {
    OneList photos =
        new OneList(
            "photos",
            Kind.PHOTO,
            true,
            List.of("id", "file"),
            List.of(List.of(text("p-1"), text("abc.heic")), List.of(text("p-2"), text("d.jpg"))));
    Document page = read(RecordPage.of("", List.of(photos), "", Map.of()));
    assertThat(all(page, "a"))
        .extracting(a -> a.getAttribute("href"))
        .containsExactly("photos/abc.heic", "photos/d.jpg");
    assertThat(all(page, "img")).hasSize(1);
  }

  @Test
  void partsOfARowStandWithItAlsoWhereTheyNameABoatsRow() throws Exception {
    OneList visits =
        new OneList(
            "visits",
            Kind.VISIT,
            true,
            List.of("id", "boat"),
            List.of(List.of(text("v"), new Cell("b", Optional.of(Kind.BOAT)))));
    OneList boats =
        new OneList(
            "boats",
            Kind.BOAT,
            true,
            List.of("id", "name"),
            List.of(List.of(text("b"), text("B"))));
    OneList invoices =
        new OneList("invoices", Kind.INVOICE, true, List.of("id"), List.of(List.of(text("i"))));
    OneList lines =
        new OneList(
            "invoice-lines",
            Kind.INVOICE,
            false,
            List.of("invoice", "visit"),
            List.of(
                List.of(
                    new Cell("i", Optional.of(Kind.INVOICE)),
                    new Cell("v", Optional.of(Kind.VISIT)))));
    Document page = read(RecordPage.of("", List.of(boats, visits, invoices, lines), "", Map.of()));
    Element rest = all(page, "section").get(1);
    assertThat(rest.getElementsByTagName("caption").item(1).getTextContent())
        .isEqualTo("Invoice lines");
  }
}
