package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.With;
import hullalmanac.core.remind.Standing;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Beside;
import hullalmanac.fixture.PdfText;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.james.mime4j.dom.BinaryBody;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a letter leaves the house: with a paper, by the mail program, on a card. */
@Tag("slow")
class LetterOutTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private Bench bench;
  private final Beside outside = new Beside();

  @BeforeEach
  void open() {
    bench = Bench.open(folder.resolve("record"));
    bench.presenter().reaches(outside);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Fleet fleet() {
    return Fleet.dueOf(bench.almanac(), DAY);
  }

  private Standing toTell() {
    return ToTell.of(fleet()).boats().get(0);
  }

  private void letter(Boat boat) {
    bench.presenter().open(new LetterSheet(bench.presenter(), boat.id()));
  }

  private SheetState.Field field(String id) {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .flatMap(b -> ((SheetState.Form) b).fields().stream())
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private List<String> enclosures() {
    return ((Input.Choice) field("with").input()).words();
  }

  private String words() {
    return bench.state().blocks().stream()
        .filter(SheetState.Words.class::isInstance)
        .map(b -> ((SheetState.Words) b).text())
        .reduce("", (a, b) -> a + b);
  }

  private List<Path> written() throws Exception {
    Path letters = folder.resolve("record/letters");
    if (!Files.isDirectory(letters)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(letters)) {
      return files.toList();
    }
  }

  private Message read() throws Exception {
    try (InputStream in = Files.newInputStream(written().get(0))) {
      return new DefaultMessageBuilder().parseMessage(in);
    }
  }

  private static Entity paper(Message message) {
    return ((Multipart) message.getBody()).getBodyParts().get(1);
  }

  @Test
  void withAReminderGoesTheHistoryOfTheBoatAsAPaper() throws Exception {
    Boat boat = toTell().boat();
    letter(boat);
    assertThat(field("with").text()).isEqualTo("history");
    bench.tasks().hold(Lane.COMPUTING);
    bench.sheet().press("draft");
    assertThat(words()).contains("Laying out what goes with it");
    assertThat(written()).isEmpty();
    bench.tasks().release(Lane.COMPUTING);
    Entity paper = paper(read());
    assertThat(paper.getMimeType()).isEqualTo("application/pdf");
    assertThat(paper.getFilename()).startsWith("2026-05-01 " + boat.name()).endsWith(".pdf");
    byte[] pdf = ((BinaryBody) paper.getBody()).getInputStream().readAllBytes();
    assertThat(PdfText.of(pdf).text()).contains(boat.name(), "What comes next");
    assertThat(words())
        .contains("Written to " + written().get(0))
        .contains("With it goes " + paper.getFilename());
  }

  @Test
  void anyOtherLetterGoesAloneUnlessOneChooses() {
    letter(toTell().boat());
    bench.write("letter", "about", LetterKind.OTHER.words());
    assertThat(field("with").text()).isEqualTo("nothing");
    bench.write("letter", "with", "history");
    bench.write("letter", "about", LetterKind.DUE.words());
    bench.write("letter", "about", LetterKind.OTHER.words());
    assertThat(field("with").text()).isEqualTo("history");
  }

  @Test
  void aLinkIsHandedOverAndSaidToCarryNoFiles() {
    Standing standing = toTell();
    Party owner = mail(standing.whom().orElseThrow(), "ada@example.org");
    letter(standing.boat());
    bench.write("subject", "subject", "One & two?");
    bench.write("body", "text", "First\n\nlast = 100 %");
    bench.sheet().press("link");
    URI link = URI.create(outside.links().get(0));
    assertThat(link.getSchemeSpecificPart())
        .isEqualTo("ada@example.org?subject=One & two?&body=First\r\n\r\nlast = 100 %");
    assertThat(words()).contains("History did not go with it: a link carries no files.");
    bench.write("letter", "with", "nothing");
    bench.sheet().press("link");
    assertThat(outside.links()).hasSize(2);
    assertThat(words()).contains("Handed to the mail program.").doesNotContain("files");
    bench.write("body", "text", "long ".repeat(500));
    bench.sheet().press("link");
    assertThat(words()).contains("long for a link");
    mail(owner, "");
    letter(standing.boat());
    bench.sheet().press("link");
    assertThat(outside.links().get(3)).startsWith("mailto:?subject=");
    assertThat(words()).contains("No mail address is known");
  }

  private Party mail(Party party, String address) {
    Party now = With.component(party, "email", address);
    bench.presenter().edit("mail", almanac -> Edit.put(now));
    return now;
  }

  @Test
  void whatCannotBeAddressedIsRefusedAndNothingLeaves() throws Exception {
    Standing standing = toTell();
    mail(standing.whom().orElseThrow(), "at home");
    letter(standing.boat());
    bench.sheet().press("link");
    assertThat(outside.links()).isEmpty();
    assertThat(bench.state().trouble().orElseThrow())
        .isEqualTo(
            "Nothing was opened. \"at home\" is not a mail address. Write it like"
                + " ada@example.org.");
    bench.sheet().press("draft");
    assertThat(written()).isEmpty();
    assertThat(bench.state().trouble().orElseThrow())
        .startsWith("No draft was written. \"at home\"");
    mail(standing.whom().orElseThrow(), "ada@example.org");
    outside.refuseMail("There is no mail program.");
    letter(standing.boat());
    bench.sheet().press("link");
    assertThat(bench.state().trouble()).contains("There is no mail program.");
  }

  /** An estimate or invoice is of whom it was written for, and goes to nobody else. */
  @Test
  void invoicesAndEstimatesGoOnlyToWhomTheyWereWrittenFor() throws Exception {
    Invoice invoice =
        bench.almanac().books().invoices().stream()
            .filter(i -> i.issued() && i.credits().isEmpty() && owns(i))
            .findFirst()
            .orElseThrow();
    Boat boat = boat(invoice);
    letter(boat);
    assertThat(enclosures()).contains(invoice.words()).startsWith("nothing", "history");
    assertThat(enclosures()).filteredOn(w -> w.startsWith("draft of an inv")).isEmpty();
    bench.write("letter", "with", invoice.words());
    bench.sheet().press("draft");
    byte[] pdf = ((BinaryBody) paper(read()).getBody()).getInputStream().readAllBytes();
    assertThat(PdfText.of(pdf).text()).contains(invoice.issue().orElseThrow().number());
    stranger(boat);
    bench.write("letter", "to", "Nell Farrow");
    assertThat(field("to").text()).isEqualTo("Nell Farrow");
    assertThat(enclosures()).noneMatch(w -> w.contains("invoice") || w.contains("credit"));
    assertThat(field("with").text()).as("what is hers no more").isEqualTo("nothing");
  }

  @Test
  void anEstimateGoesToWhomItWasWrittenForAndSaysThatItIsADraft() {
    Estimate estimate =
        bench.almanac().books().estimates().stream()
            .filter(e -> e.party().isPresent() && e.answer().isEmpty())
            .findFirst()
            .orElseThrow();
    Estimate valid = With.component(estimate, "validUntil", DAY.plusDays(30));
    Estimate newest = With.component(valid, "day", DAY);
    Estimate plain = With.component(newest, "state", Estimate.State.DRAFT);
    bench.presenter().edit("newest", almanac -> Edit.put(plain));
    Boat boat =
        bench.almanac().boats().stream()
            .filter(b -> b.id().equals(plain.boat()))
            .findFirst()
            .orElseThrow();
    Party owner =
        bench.almanac().parties().stream()
            .filter(p -> plain.party().equals(Optional.of(p.id())))
            .findFirst()
            .orElseThrow();
    stranger(boat);
    letter(boat);
    bench.write("letter", "to", owner.name());
    assertThat(enclosures()).contains("draft of the estimate of 1 May");
    bench.write("letter", "to", "Nell Farrow");
    assertThat(enclosures()).noneMatch(w -> w.contains("estimate"));
  }

  private boolean owns(Invoice invoice) {
    return bench.almanac().roles().stream()
        .anyMatch(
            r ->
                r.party().equals(invoice.party())
                    && invoice.boat().equals(Optional.of(r.boat()))
                    && r.holdsOn(DAY));
  }

  private Boat boat(Invoice invoice) {
    return bench.almanac().boats().stream()
        .filter(b -> invoice.boat().equals(Optional.of(b.id())))
        .findFirst()
        .orElseThrow();
  }

  /** Somebody else who has to do with a boat. */
  private void stranger(Boat boat) {
    Party other = bench.almanac().parties().get(0);
    Party nell = With.component(other, "id", bench.presenter().ids().<Party>next());
    Party named = With.component(With.component(nell, "key", "nell"), "name", "Nell Farrow");
    Row role =
        new hullalmanac.core.record.Role(
            bench.presenter().ids().next(),
            "nell-opens",
            boat.id(),
            named.id(),
            hullalmanac.core.record.RoleKind.OPENS_UP,
            DAY.minusDays(1),
            Optional.empty());
    bench.presenter().edit("somebody else", almanac -> Edit.put(named, role));
  }

  @Test
  void aCardSaysTheLetterAsItWasChangedByHand() {
    Standing standing = toTell();
    letter(standing.boat());
    bench.write("body", "text", "Ahoy, a word from the slipway.");
    bench.sheet().onPaper();
    SheetState.Page page =
        bench.state().blocks().stream()
            .filter(SheetState.Pages.class::isInstance)
            .flatMap(b -> ((SheetState.Pages) b).pages().stream())
            .findFirst()
            .orElseThrow();
    assertThat(page.words())
        .contains(
            "Ahoy, a word from the slipway.",
            standing.boat().name(),
            standing.whom().orElseThrow().name());
    assertThat(bench.state().facts()).isEqualTo("1 page A6");
  }
}
