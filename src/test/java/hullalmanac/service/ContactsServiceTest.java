package hullalmanac.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.report.MailDraft;
import hullalmanac.core.work.CardVersion;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.PartyMerge;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContactsServiceTest {
  private static final String CARDS =
      """
      BEGIN:VCARD
      VERSION:3.0
      FN:Ada Ames
      TEL;TYPE=CELL:+1 555 555 0199
      EMAIL:ada@example.org
      END:VCARD
      BEGIN:VCARD
      VERSION:3.0
      FN:Ben Birch
      TEL:+1 555 555 0131
      END:VCARD
      """;

  @TempDir Path folder;

  private final Party ada = party(1, "ames", "Ada Ames", "+1 555 555 0130");
  private final Party twin = party(2, "ames-2", "Ames, Ada", "");
  private final Made made = new Made(48.4);
  private final Role owns =
      new Role(
          new Id<>(3),
          "owner",
          made.boat().id(),
          twin.id(),
          RoleKind.OWNS,
          LocalDate.of(2025, 3, 1),
          Optional.empty());
  private RecordService record;
  private EditService edits;
  private ContactsService contacts;

  private static Party party(long id, String key, String name, String phone) {
    return new Party(
        new Id<>(id), key, PartyKind.PERSON, name, phone, "", "", "", Optional.empty(), "");
  }

  @BeforeEach
  void open() {
    RecordService.Surroundings desk =
        new RecordService.Surroundings(
            Clock.fixed(Instant.parse("2026-05-01T09:00:00Z"), ZoneOffset.UTC),
            new Random(8)::nextLong,
            "desk",
            1);
    RecordService.create(folder.resolve("record"), desk);
    record = RecordService.open(folder.resolve("record"), desk);
    edits = new EditService(record);
    contacts = new ContactsService(record);
    record.change("all", Edit.all(made.almanac()).and(Edit.put(ada, twin, owns)));
  }

  @AfterEach
  void close() {
    record.close();
  }

  private Path file(String text) throws Exception {
    return Files.writeString(folder.resolve("phone.vcf"), text.replace("\n", "\r\n"));
  }

  @Test
  void comparingChangesNothing() throws Exception {
    Almanac before = record.almanac();
    ContactsService.Compared compared = contacts.compare(file(CARDS));
    assertThat(compared.problems()).isEmpty();
    assertThat(compared.contacts().fresh()).extracting(Party::name).containsExactly("Ben Birch");
    assertThat(compared.contacts().alike()).hasSize(1);
    assertThat(record.almanac()).isEqualTo(before);
  }

  @Test
  void oneUndoTakesBackAllThatOneFileBrought() throws Exception {
    Almanac before = record.almanac();
    Path file = file(CARDS);
    assertThat(contacts.bringIn(file, contacts.compare(file).contacts(), true))
        .isInstanceOf(Change.Ready.class);
    assertThat(record.almanac().parties()).extracting(Party::name).contains("Ben Birch");
    assertThat(record.almanac().parties())
        .filteredOn(p -> p.id().equals(ada.id()))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.phone()).isEqualTo("+1 555 555 0130");
              assertThat(p.email()).isEqualTo("ada@example.org");
              assertThat(p.note()).isEqualTo("Also +1 555 555 0199");
            });
    assertThat(edits.undo()).contains("contact cards of phone.vcf");
    assertThat(record.almanac().rows()).containsExactlyInAnyOrderElementsOf(before.rows());
  }

  @Test
  void mergingTwoPartiesIsOneActThatIsUndoneAndRedone() {
    Almanac before = record.almanac();
    edits.change(
        "two made one",
        almanac -> Change.checked(almanac, PartyMerge.edit(almanac, ada, twin, Map.of())));
    Almanac merged = record.almanac();
    assertThat(merged.parties()).extracting(Party::key).containsExactly("ames");
    assertThat(merged.roles()).extracting(Role::party).containsExactly(ada.id());
    edits.undo();
    assertThat(record.almanac().rows()).containsExactlyInAnyOrderElementsOf(before.rows());
    edits.redo();
    assertThat(record.almanac().rows()).containsExactlyInAnyOrderElementsOf(merged.rows());
  }

  @Test
  void whatWasWrittenComesBackAsTheSamePeople() {
    Path file = folder.resolve("out.vcf");
    for (CardVersion version : CardVersion.values()) {
      assertThat(contacts.write(file, version)).isEqualTo(2);
      ContactsService.Compared compared = contacts.compare(file);
      assertThat(compared.contacts().there()).containsExactlyInAnyOrder(ada, twin);
      assertThat(compared.contacts().fresh()).isEmpty();
      assertThat(compared.contacts().alike()).isEmpty();
    }
  }

  @Test
  void neverWritesOverTheCardsOfOthers() throws Exception {
    Path file = file(CARDS);
    byte[] before = Files.readAllBytes(file);
    assertThatThrownBy(() -> contacts.write(file, CardVersion.V3_0))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("Choose another name");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    assertThatThrownBy(() -> contacts.compare(folder.resolve("none.vcf")))
        .isInstanceOf(RecordException.class);
    assertThatThrownBy(() -> contacts.write(folder, CardVersion.V3_0))
        .isInstanceOf(RecordException.class);
  }

  @Test
  void writesADraftWithAReportAndNothingWhereAnAddressIsNone() throws Exception {
    Paper paper =
        new Paper(
            "Report",
            "Arctic Tern",
            new Paper.Sender("Tern & Tide", List.of(), "", ""),
            Business.Paper.A4,
            List.of());
    MadePaper report = edits.papers().make(paper, LocalDate.of(2026, 5, 1));
    Path draft = folder.resolve("draft.eml");
    var to = new MailDraft.Recipient("Ada Ames", "ada@example.org");
    var message = new MailDraft(List.of(to), "Arctic Tern", "Done.");
    MailService mail = edits.mail();
    assertThat(mail.write(message, List.of(report), draft)).isEmpty();
    assertThat(Files.readString(draft, StandardCharsets.US_ASCII))
        .contains(
            "Date: Fri, 1 May 2026 09:00:00 +0000",
            "2026-05-01 Report Arctic Tern.pdf",
            "JVBERi0x");
    assertThat(mail.link(message).link())
        .contains("mailto:ada@example.org?subject=Arctic%20Tern&body=Done.");
    var nobody = new MailDraft.Recipient("Ada", "at home");
    Path none = folder.resolve("none.eml");
    assertThat(mail.write(new MailDraft(List.of(nobody), "s", "t"), List.of(), none)).isPresent();
    assertThat(none).doesNotExist();
    assertThat(mail.link(new MailDraft(List.of(nobody), "s", "t")).link()).isEmpty();
    assertThat(mail.link(new MailDraft(List.of(nobody), "s", "t")).refused()).isPresent();
    assertThatThrownBy(() -> mail.write(message, List.of(), folder.resolve("no/draft.eml")))
        .isInstanceOf(RecordException.class);
  }
}
