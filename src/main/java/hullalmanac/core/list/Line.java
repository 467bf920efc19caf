package hullalmanac.core.list;

import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Tone;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a row of a list says of one boat, her owner and where she lies.
 *
 * @param id tells it from the other lines: {@code 7}, or {@code 7b} for the second boat of a row
 * @param row from 0
 * @param shown what each cell was read as, by the index of its column
 * @param marks sentences about its cells
 */
public record Line(
    String id,
    int row,
    Craft boat,
    Owner owner,
    Place place,
    List<Work> visits,
    Map<Integer, String> shown,
    List<Mark> marks) {
  public Line {
    visits = List.copyOf(visits);
    shown = Map.copyOf(shown);
    marks = List.copyOf(marks);
  }

  /**
   * The boat.
   *
   * @param name empty when there is none
   * @param notes lines to be kept as they are, each with its heading in front
   */
  public record Craft(
      String name,
      Optional<BoatType> type,
      Optional<Length> loa,
      Optional<Length> beam,
      String hullNumber,
      Optional<Integer> built,
      Optional<Finish> finish,
      Optional<Tone> tone,
      List<String> notes) {
    public Craft {
      notes = List.copyOf(notes);
    }
  }

  /** Her owner; empty texts are unknown. */
  public record Owner(
      String name, PartyKind kind, String phone, String mail, String address, List<String> notes) {
    public Owner {
      notes = List.copyOf(notes);
    }
  }

  /** Where she lies; empty texts are unknown. */
  public record Place(String harbour, String berth, String keys, String gateCode) {
    boolean isEmpty() {
      return harbour.isEmpty() && berth.isEmpty() && keys.isEmpty() && gateCode.isEmpty();
    }
  }

  /**
   * A day on which something was done.
   *
   * @param said what the list says of it, as it stands
   * @param product what was laid, as it stands; empty when it is not said
   */
  public record Work(LocalDate day, String said, String product) {}

  /** Whether a boat stands in it. */
  public boolean hasBoat() {
    return !boat.name().isEmpty();
  }

  /** Whether an owner stands in it. */
  public boolean hasOwner() {
    return !owner.name().isEmpty();
  }
}
