package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.With;
import hullalmanac.core.remind.Standing;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Beside;
import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.james.mime4j.stream.Field;

/**
 * From the record to the file: no name of an owner or a boat, and no subject, becomes a header, a
 * reader, a part or a folder. Apache James Mime4J reads what was written.
 */
@Tag("slow")
class LetterNamesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  private static final List<String> HEADERS =
      List.of(
          "Date",
          "To",
          "Subject",
          "MIME-Version",
          "Content-Type",
          "Content-Transfer-Encoding",
          "X-Unsent");

  private static Path folder;
  private static Bench bench;
  private static Beside outside;

  @BeforeContainer
  static void open() throws IOException {
    folder = Files.createTempDirectory("letters");
    bench = Bench.open(folder.resolve("record"));
    outside = new Beside();
    bench.presenter().reaches(outside);
  }

  @AfterContainer
  static void close() throws IOException {
    bench.close();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  @Provide
  Arbitrary<String> names() {
    return Arbitraries.strings()
        .withChars("\r\n\t\u0007\u007F\u0085\u2028\u2029:;,<>@\"\\/()=?_. aBcñ船🚤-{}&")
        .ofMaxLength(40)
        .flatMap(
            odd ->
                Arbitraries.of(
                    "x" + odd,
                    "x" + odd + "\r\nBcc: all@example.org",
                    "x\nBcc: all@example.org\n\n" + odd,
                    "x" + odd + "\r Bcc: all@example.org",
                    "=?UTF-8?Q?x=0D=0ABcc:_all@example.org?=" + odd,
                    "x\u2028Bcc: all@example.org",
                    "../../x" + odd,
                    "{{x" + odd,
                    "x&bcc=all@example.org?" + odd));
  }

  private static Standing toTell() {
    return ToTell.of(Fleet.dueOf(bench.almanac(), DAY)).boats().get(0);
  }

  @Property(tries = 25)
  void noNameLeavesItsPlace(
      @ForAll("names") String owner,
      @ForAll("names") String boat,
      @ForAll("names") String subject,
      @ForAll @IntRange(max = 4) int oneInFive)
      throws Exception {
    boolean withHistory = oneInFive == 0;
    Standing standing = toTell();
    Party named = With.component(standing.whom().orElseThrow(), "name", owner);
    Party reached = With.component(named, "email", "ada@example.org");
    Boat called = With.component(standing.boat(), "name", boat);
    bench.presenter().edit("names", almanac -> Edit.put(reached, called));
    assertThat(bench.boat(boat)).isEqualTo(called);
    bench.presenter().open(new LetterSheet(bench.presenter(), called.id()));
    bench.write("letter", "with", withHistory ? "history" : "nothing");
    theDraftIsOne(withHistory);
    bench.write("subject", "subject", subject);
    theDraftIsOne(withHistory);
    outside.links().clear();
    bench.sheet().press("link");
    URI link = URI.create(outside.links().get(0));
    assertThat(link.getRawSchemeSpecificPart().split("[?&]"))
        .hasSize(3)
        .satisfiesExactly(
            to -> assertThat(to).isEqualTo("ada@example.org"),
            s -> assertThat(s).startsWith("subject=").doesNotContain("%0A", "%0D"),
            b -> assertThat(b).startsWith("body="));
  }

  private static void theDraftIsOne(boolean attached) throws Exception {
    Path letters = folder.resolve("record/letters");
    if (Files.isDirectory(letters)) {
      try (Stream<Path> old = Files.list(letters)) {
        for (Path file : old.toList()) {
          Files.delete(file);
        }
      }
    }
    bench.sheet().press("draft");
    List<Path> written;
    try (Stream<Path> files = Files.list(letters)) {
      written = files.toList();
    }
    assertThat(written).singleElement().asString().endsWith(".eml");
    byte[] bytes = Files.readAllBytes(written.get(0));
    String text = new String(bytes, StandardCharsets.US_ASCII);
    assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
    Message message = new DefaultMessageBuilder().parseMessage(new ByteArrayInputStream(bytes));
    assertThat(message.getHeader().getFields())
        .extracting(Field::getName)
        .isSubsetOf(HEADERS)
        .doesNotHaveDuplicates();
    assertThat(message.getTo().flatten()).hasSize(1);
    assertThat(message.getTo().flatten().get(0).getAddress()).isEqualTo("ada@example.org");
    assertThat(message.isMultipart()).isEqualTo(attached);
    if (attached) {
      partsAreTwo((Multipart) message.getBody());
    }
  }

  private static void partsAreTwo(Multipart parts) {
    assertThat(parts.getBodyParts()).hasSize(2);
    Entity paper = parts.getBodyParts().get(1);
    assertThat(paper.getHeader().getFields())
        .extracting(Field::getName)
        .containsExactlyInAnyOrder(
            "Content-Type", "Content-Disposition", "Content-Transfer-Encoding");
    assertThat(paper.getFilename())
        .startsWith("2026-05-01 ")
        .endsWith(".pdf")
        .doesNotContain("/", "\\", "\r", "\n");
  }
}
