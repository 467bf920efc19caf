package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RisksTest {
  private static final LocalDate FROM = LocalDate.of(2025, 1, 1);
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private final Scene scene = new Scene();
  private final List<Party> parties = new ArrayList<>();
  private final List<Role> roles = new ArrayList<>();

  private void party(RoleKind kind, Double risk, LocalDate until) {
    long id = 1000L + parties.size();
    Party party =
        new Party(
            new Id<>(id),
            "p" + id,
            PartyKind.PERSON,
            "Ada",
            "",
            "",
            "",
            "",
            Optional.ofNullable(risk),
            "");
    parties.add(party);
    roles.add(
        new Role(
            new Id<>(id + 100),
            "r" + id,
            scene.topsides.boat(),
            party.id(),
            kind,
            FROM,
            Optional.ofNullable(until)));
  }

  private double risk() {
    Almanac a = scene.yard.almanac(Business.unnamed());
    Almanac with =
        new Almanac(
            a.business(),
            a.harbours(),
            parties,
            a.boats(),
            roles,
            a.surfaces(),
            a.berths(),
            a.carePlans(),
            a.products(),
            a.bottles(),
            a.visits(),
            a.steps(),
            a.coats(),
            a.duties(),
            a.findings(),
            a.photos());
    return new Risks(with, TODAY).of(scene.topsides, scene.sealant);
  }

  @Test
  void isPracticeWhereNobodySaysOtherwise() {
    party(RoleKind.OWNS, null, null);
    assertThat(risk()).isEqualTo(0.30);
  }

  @Test
  void isTheDecidersBeforeTheOwners() {
    party(RoleKind.DECIDES, 0.15, null);
    party(RoleKind.OWNS, 0.45, null);
    party(RoleKind.PAYS, 0.60, null);
    assertThat(risk()).isEqualTo(0.15);
  }

  @Test
  void isTheOwnersOfTheDay() {
    party(RoleKind.OWNS, 0.20, LocalDate.of(2026, 4, 1));
    party(RoleKind.OWNS, 0.45, null);
    assertThat(risk()).isEqualTo(0.45);
  }
}
