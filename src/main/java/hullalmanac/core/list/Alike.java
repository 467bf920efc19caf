package hullalmanac.core.list;

import java.util.List;

/**
 * A boat or an owner of a list who seems to be known already, in the record or from a row above.
 *
 * @param id of the answer among {@link ListChoices#answers}
 * @param who it is
 * @param there who is known already, such as {@code the record} or {@code row 3}
 * @param certain whether there is little doubt
 * @param why what speaks for it, in words
 * @param choice what is done
 * @param facts what both say, side by side
 */
public record Alike(
    String id, Who who, String there, boolean certain, String why, Same choice, List<Fact> facts) {
  public Alike {
    facts = List.copyOf(facts);
  }

  /**
   * A boat or an owner of a list.
   *
   * @param row from 0
   * @param isBoat whether it is a boat
   */
  public record Who(int row, boolean isBoat, String name) {}

  /** Who it is, such as {@code Row 7: Arctic Tern}. */
  public String title() {
    return "Row " + (who.row() + 1) + ": " + who.name();
  }

  /**
   * Something that can be compared.
   *
   * @param inList what the list says; empty when it says nothing
   * @param there what is known already; empty when nothing is
   */
  public record Fact(String what, String inList, String there) {
    /** Whether both say something, and not the same. */
    public boolean differs() {
      return !inList.isEmpty()
          && !there.isEmpty()
          && !Shape.sameWords(inList, there)
          && !People.agree(inList, there);
    }
  }
}
